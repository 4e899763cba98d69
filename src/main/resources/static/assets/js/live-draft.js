/*
 * What is typed into a form and not saved: leaving it warns, and a draft of it is kept in this browser for the person who typed it,
 * until it is saved or discarded.
 */
const form = document.querySelector("[data-live-form]");

if (form) {
  const offer = form.querySelector("[data-live-draft]");
  const place = `draft ${offer.dataset.person} ${location.pathname}`;
  const refused = form.querySelector(".message--wrong") !== null;
  let unsaved = refused;
  let leaving = false;

  form.addEventListener("input", () => {
    unsaved = true;
  });

  form.addEventListener("changed", ({ detail }) => {
    unsaved = detail.unsaved;
    save();
  });

  addEventListener("beforeunload", (event) => {
    if (!leaving && unsaved) {
      event.preventDefault();
    }
  });

  form.addEventListener("submit", (event) => {
    if (event.defaultPrevented) {
      return;
    }
    leaving = true;
    put({ ...read(), sent: true });
  });

  form.querySelector("[data-live-restore]").addEventListener("click", () => {
    form.dispatchEvent(new CustomEvent("restore", { detail: read()?.values ?? {} }));
    offer.hidden = true;
  });

  form.querySelector("[data-live-forget]").addEventListener("click", () => {
    localStorage.removeItem(place);
    offer.hidden = true;
  });

  if (refused) {
    save();
  } else if (read()?.sent) {
    localStorage.removeItem(place);
  } else if (read()) {
    offer.hidden = false;
  }

  form.addEventListener("change", save);

  function save() {
    const values = {};
    for (const input of form.elements) {
      if (input.name && input.type !== "hidden" && input.type !== "submit") {
        values[input.name] = input.type === "checkbox" ? String(input.checked) : input.value;
      }
    }
    put({ values });
    offer.hidden = true;
  }

  function read() {
    try {
      return JSON.parse(localStorage.getItem(place));
    } catch {
      return null;
    }
  }

  /* A browser without room for it has no draft. */
  function put(kept) {
    try {
      localStorage.setItem(place, JSON.stringify(kept));
    } catch {
      localStorage.removeItem(place);
    }
  }
}
