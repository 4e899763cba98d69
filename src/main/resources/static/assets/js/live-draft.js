/*
 * What is typed into a form and not saved: leaving it warns, and a draft of it is kept in this browser for the person who typed it,
 * until it is saved or discarded.
 */
export function keepDraft(form, tools, dirty, restore) {
  const place = `draft ${tools.dataset.person} ${location.pathname}`;
  const offer = tools.querySelector("[data-live-draft]");
  const refused = form.querySelector(".message--wrong") !== null;
  let leaving = false;

  addEventListener("beforeunload", (event) => {
    if (!leaving && dirty()) {
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

  tools.querySelector("[data-live-restore]").addEventListener("click", () => {
    restore(read()?.values ?? {});
    offer.hidden = true;
  });

  tools.querySelector("[data-live-forget]").addEventListener("click", () => {
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

  return { save };
}
