/*
 * A form of dimensions with its drawing: what is typed or pulled is tried on the server, which says what follows it; undo and redo
 * of what is not saved. Beside it live-handles.js pulls, live-draft.js keeps drafts and live-errors.js says what is wrong; they
 * speak by events of the form: pull, settle and say, changed and restore.
 */
const tools = document.querySelector("[data-live-tools]");

if (tools) {
  const form = tools.closest("form");
  const fields = form.querySelector(".dimension-form");
  const drawing = document.getElementById("live-drawing");
  const undo = tools.querySelector("[data-live-undo]");
  const redo = tools.querySelector("[data-live-redo]");
  const said = tools.querySelector("[data-live-said]");
  const gives = tools.querySelector("[data-live-gives]");
  const known = new Map();
  const done = [];
  const undone = [];

  for (const input of fields.querySelectorAll("input, select, textarea")) {
    known.set(input, valueOf(input));
  }

  /* What an answer has changed beside what was typed, until it is committed. */
  const followed = new Set();
  const jobs = new Map();
  let working = null;
  let typing;

  fields.addEventListener("input", ({ target }) => {
    clearTimeout(typing);
    typing = setTimeout(() => todo(target, () => tryTyped(target)), 150);
    undo.disabled = done.length === 0 && changes().length === 0;
  });

  fields.addEventListener("change", ({ target }) => {
    clearTimeout(typing);
    if (known.has(target) && known.get(target) !== valueOf(target)) {
      todo(target, () => tryTyped(target));
      todo("commit", commit);
    }
  });

  /* What follows the last change is saved with it. */
  form.addEventListener("submit", async (event) => {
    if (working) {
      event.preventDefault();
      await working;
      form.requestSubmit(event.submitter);
    }
  });

  /* One after the other; of what is still to do about one thing, only the latest. */
  function todo(thing, job) {
    jobs.delete(thing);
    jobs.set(thing, job);
    form.dataset.working = "";
    working ??= (async () => {
      while (jobs.size > 0) {
        const [next, run] = jobs.entries().next().value;
        jobs.delete(next);
        await run();
      }
      working = null;
      delete form.dataset.working;
    })();
  }

  /* Enter in a field is the end of typing, not of the form. */
  form.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && event.target.matches("input:not([type=checkbox])")) {
      event.preventDefault();
      event.target.dispatchEvent(new Event("change", { bubbles: true }));
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

  form.addEventListener("pull", ({ detail: { key, place } }) => todo("pull", () => tryChange(key, place, null)));
  form.addEventListener("settle", () => todo("commit", commit));
  form.addEventListener("say", ({ detail }) => {
    said.textContent = detail;
  });
  form.addEventListener("restore", ({ detail }) => restore(detail));

  /* A landmark changes as a point, a dimension as one value; anything else is changed by itself. */
  function tryTyped(input) {
    const [, key, axis] = input.name.match(/^dimensions\.(\w+)(?:\.([xz]))?$/) ?? [];
    if (axis) {
      const x = form.elements[`dimensions.${key}.x`];
      const z = form.elements[`dimensions.${key}.z`];
      return x.value && z.value ? tryChange(key, { x: x.value, z: z.value }, input) : tryAlone(input);
    }
    return key && input.value && input.matches(".field__input--number")
      ? tryChange(key, { to: input.value }, input)
      : tryAlone(input);
  }

  function tryAlone(input) {
    back(input);
    redraw();
  }

  /* Asks what follows a change of the form as it was. */
  async function tryChange(key, change, typed) {
    const answer = await follows(key, change, typed);
    back(typed);
    for (const [name, text] of Object.entries(answer?.fields ?? {})) {
      const input = form.elements[name];
      if (input && input !== typed && !sameLandmark(input, typed) && input.type !== "checkbox") {
        input.value = text;
        followed.add(input);
      }
    }
    if (answer && typed) {
      said.textContent = answer.said;
    }
    redraw();
  }

  async function follows(key, change, typed) {
    const body = new URLSearchParams(new FormData(form));
    for (const [input, value] of known) {
      if (followed.has(input) || input === typed || sameLandmark(input, typed)) {
        body.set(input.name, value);
      }
    }
    body.set("changed", key);
    body.set("givesWay", gives.value);
    Object.entries(change).forEach(([name, value]) => body.set(name, value));
    const token = document.querySelector("meta[name=csrf]");
    try {
      const answer = await fetch(tools.dataset.change, {
        method: "POST",
        body,
        headers: token ? { [token.dataset.header]: token.content } : {},
      });
      return answer.ok ? await answer.json() : null;
    } catch {
      return null;
    }
  }

  /* What followed an earlier answer, as it was. */
  function back(typed) {
    for (const input of followed) {
      if (input !== typed && !sameLandmark(input, typed)) {
        input.value = known.get(input);
      }
    }
    followed.clear();
  }

  function sameLandmark(input, typed) {
    return typed && /\.[xz]$/.test(typed.name) && input.name.slice(0, -1) === typed.name.slice(0, -1);
  }

  function redraw() {
    drawing.dispatchEvent(new Event("redraw"));
  }

  function changes() {
    return [...known]
      .filter(([input, before]) => valueOf(input) !== before)
      .map(([input, before]) => ({ input, before, after: valueOf(input) }));
  }

  function commit() {
    followed.clear();
    const made = changes();
    if (made.length === 0) {
      return;
    }
    done.push(made);
    undone.length = 0;
    made.forEach(({ input, after }) => known.set(input, after));
    changed();
  }

  function step(from, to, which, words) {
    if (which === "before") {
      commit();
    }
    const made = from.pop();
    to.push(made);
    for (const change of made) {
      put(change.input, change[which]);
      known.set(change.input, change[which]);
    }
    redraw();
    said.textContent = words
      .replace("{label}", made.map((change) => nameOf(change.input)).slice(0, 3).join(", "))
      .replace("{value}", shown(made[0].input) || tools.dataset.empty);
    changed();
  }

  function restore(values) {
    for (const input of form.elements) {
      if (input.name in values && input.type !== "hidden" && input.type !== "submit") {
        put(input, values[input.name]);
      }
    }
    commit();
    redraw();
  }

  function valueOf(input) {
    return input.type === "checkbox" ? String(input.checked) : input.value;
  }

  function put(input, value) {
    if (input.type === "checkbox") {
      input.checked = value === "true";
    } else {
      input.value = value;
    }
  }

  function changed() {
    form.dispatchEvent(new CustomEvent("changed", { detail: { unsaved: done.length > 0 } }));
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
}
