/* What every page does with script: says that there is script, and lets partial updates pass the forgery check. */
document.documentElement.dataset.script = "";

const csrf = document.querySelector("meta[name=csrf]");

document.addEventListener("htmx:configRequest", (event) => {
  if (csrf && event.detail.verb !== "get") {
    event.detail.headers[csrf.dataset.header] = csrf.content;
  }
});

/* A refused form comes back with 4xx and the form in it: show it instead of dropping it. */
document.addEventListener("htmx:beforeSwap", (event) => {
  const { status } = event.detail.xhr;
  if (status === 409 || status === 412 || status === 422) {
    event.detail.shouldSwap = true;
    event.detail.isError = false;
  }
});

/* What is wrong with a refused form is read first. */
const refused = document.querySelector(".message--wrong[role=alert]");

if (refused) {
  refused.tabIndex = -1;
  refused.focus();
}
