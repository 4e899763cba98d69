/*
 * A form of dimensions with its drawing: undo and redo of what was typed but not saved, and what is wrong beside the input
 * that it is wrong with. The drawing itself is fetched by htmx, which listens to the same changes.
 */
const tools = document.querySelector("[data-live-tools]");

if (tools) {
  const form = tools.closest("form");
  const fields = form.querySelector(".dimension-form");
  const undo = tools.querySelector("[data-live-undo]");
  const redo = tools.querySelector("[data-live-redo]");
  const said = tools.querySelector("[data-live-said]");
  const known = new Map();
  const done = [];
  const undone = [];

  for (const input of fields.querySelectorAll("input, select, textarea")) {
    known.set(input, input.value);
  }

  fields.addEventListener("change", ({ target }) => {
    const before = known.get(target);
    if (before === undefined || before === target.value) {
      return;
    }
    done.push({ input: target, before, after: target.value });
    undone.length = 0;
    known.set(target, target.value);
    said.textContent = "";
    enable();
  });

  /* What is still being typed can be undone as well: the click on the button ends it and makes it a change. */
  fields.addEventListener("input", ({ target }) => {
    if (known.has(target)) {
      undo.disabled = done.length === 0 && known.get(target) === target.value;
    }
  });

  undo.addEventListener("click", () => step(done, undone, "before", tools.dataset.undone));
  redo.addEventListener("click", () => step(undone, done, "after", tools.dataset.redone));

  /* In a text field the browser has an undo of its own. */
  document.addEventListener("keydown", (event) => {
    const editing = event.target.closest?.("input:not([type=button]), textarea, [contenteditable]");
    if (editing || event.altKey || !(event.ctrlKey || event.metaKey)) {
      return;
    }
    const key = event.key.toLowerCase();
    const button = key === "y" || (key === "z" && event.shiftKey) ? redo : key === "z" ? undo : null;
    if (button && !button.disabled) {
      event.preventDefault();
      button.click();
    }
  });

  function step(from, to, which, words) {
    const change = from.pop();
    to.push(change);
    const value = change[which];
    change.input.value = value;
    known.set(change.input, value);
    change.input.dispatchEvent(new Event("change", { bubbles: true }));
    said.textContent = words
      .replace("{label}", nameOf(change.input))
      .replace("{value}", shown(change.input) || tools.dataset.empty);
    enable();
  }

  /* A button that is switched off loses the keyboard: hand it to the other one. */
  function enable() {
    const focused = document.activeElement;
    undo.disabled = done.length === 0;
    redo.disabled = undone.length === 0;
    if (focused === undo && undo.disabled) {
      redo.focus();
    } else if (focused === redo && redo.disabled) {
      undo.focus();
    }
  }

  function nameOf(input) {
    const label = input.getAttribute("aria-label") || input.labels?.[0]?.querySelector("span")?.textContent;
    return (label || input.labels?.[0]?.textContent || input.name).trim();
  }

  function shown(input) {
    return input.selectedOptions ? input.selectedOptions[0].textContent.trim() : input.value;
  }

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
