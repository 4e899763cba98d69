/* The theme switch without a new page: draws at once, tells the server after. */
const root = document.documentElement;

function show(theme, choices) {
  if (theme === "system") {
    delete root.dataset.theme;
  } else {
    root.dataset.theme = theme;
  }
  for (const choice of choices) {
    choice.setAttribute("aria-pressed", String(choice.value === theme));
  }
}

for (const form of document.querySelectorAll("form.theme")) {
  form.addEventListener("submit", (event) => {
    const pressed = event.submitter;
    if (!pressed) {
      return;
    }
    event.preventDefault();
    show(pressed.value, form.querySelectorAll("button[name=theme]"));
    const fields = new URLSearchParams(new FormData(form));
    fields.set("theme", pressed.value);
    fetch(form.action, { method: "POST", body: fields, redirect: "manual", keepalive: true });
  });
}
