/* What is wrong with a form that is being typed, beside the input that it is wrong with. */
const form = document.querySelector("[data-live-form]");

if (form) {
  const wrong = new Map();

  document.addEventListener("htmx:afterSettle", () => {
    clear();
    for (const link of document.querySelectorAll("#live-wrong [data-live-error]")) {
      const input = document.getElementById(link.hash.slice(1));
      if (input && !wrong.has(input)) {
        mark(input, link.textContent);
      }
    }
  });

  /* An input may be folded away. */
  form.addEventListener("click", ({ target }) => {
    const link = target.closest?.("a[href^='#']");
    const input = link && document.getElementById(link.hash.slice(1));
    if (input) {
      input.closest("details")?.setAttribute("open", "");
      input.focus();
    }
  });

  function mark(input, message) {
    const error = document.createElement("p");
    error.className = "field__error";
    error.id = `${input.id}-live-error`;
    error.textContent = message;
    (input.closest(".field__box") || input).before(error);
    wrong.set(input, { error, described: input.getAttribute("aria-describedby") });
    input.setAttribute("aria-invalid", "true");
    input.setAttribute("aria-describedby", error.id);
    input.closest(".field")?.classList.add("field--wrong");
  }

  function clear() {
    for (const [input, { error, described }] of wrong) {
      error.remove();
      input.removeAttribute("aria-invalid");
      if (described) {
        input.setAttribute("aria-describedby", described);
      } else {
        input.removeAttribute("aria-describedby");
      }
      input.closest(".field")?.classList.remove("field--wrong");
    }
    wrong.clear();
  }
}
