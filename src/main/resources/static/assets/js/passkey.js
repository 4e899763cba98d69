/*
 * Forms that take a passkey. On submit the browser asks its authenticator for what the server wants (data-options), puts
 * the answer into the field "credential" and sends the form. Without all that a passkey takes, a sentence stands instead.
 */
function show(form, name) {
  const place = form.querySelector("[data-passkey-problem]");
  place.textContent = form.dataset[name];
  place.hidden = false;
}

function problem(error) {
  if (error.name === "NotAllowedError" || error.name === "AbortError") {
    return "cancelled";
  }
  return error.name === "InvalidStateError" ? "known" : "failed";
}

async function answer(form, response) {
  const options = await response.json();
  if (form.dataset.passkey === "make") {
    return navigator.credentials.create({ publicKey: PublicKeyCredential.parseCreationOptionsFromJSON(options) });
  }
  return navigator.credentials.get({ publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(options) });
}

async function take(form) {
  const body = new URLSearchParams(new FormData(form));
  const response = await fetch(form.dataset.options, { method: "POST", body }).catch(() => null);
  if (response?.status === 422) {
    form.submit(); // for the page that says what is wrong with what was typed
  } else if (!response?.ok) {
    show(form, "unanswered");
  } else {
    const credential = await answer(form, response);
    form.elements.credential.value = JSON.stringify(credential);
    form.submit();
  }
}

async function press(form, button) {
  form.querySelector("[data-passkey-problem]").hidden = true;
  button.disabled = true;
  try {
    await take(form);
  } catch (error) {
    show(form, problem(error));
  }
  button.disabled = false;
}

function instead(form) {
  if (window.location.origin !== form.dataset.origin) {
    return "elsewhere";
  }
  return window.PublicKeyCredential?.parseCreationOptionsFromJSON ? null : "unsupported";
}

for (const form of document.querySelectorAll("form[data-passkey]")) {
  const why = instead(form);
  if (why) {
    const place = form.nextElementSibling;
    place.textContent = form.dataset[why];
    place.hidden = false;
    continue;
  }
  form.hidden = false;
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    press(form, event.submitter ?? form.querySelector("button"));
  });
}
