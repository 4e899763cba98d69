/*
 * The points of the drawing by which dimensions are pulled: with a pointer, a finger or the arrow keys. They lie over the drawing,
 * which is drawn anew under them.
 */
const SVG = "http://www.w3.org/2000/svg";
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

const form = document.querySelector("[data-live-form]");

if (form) {
  const stage = form.querySelector("[data-live-stage]");
  const drawing = document.getElementById("live-drawing");
  const over = document.createElementNS(SVG, "svg");
  over.setAttribute("class", "handles");
  stage.append(over);
  const shown = new Map();
  let factor = 1;
  let held = null;

  place();
  document.addEventListener("htmx:afterSettle", place);
  new ResizeObserver(place).observe(stage);

  const busy = () => "working" in form.dataset || drawing.classList.contains("htmx-request");
  const say = (words) => tell("say", words);
  const pull = (key, place) => tell("pull", { key, place });

  function tell(what, detail) {
    form.dispatchEvent(new CustomEvent(what, { detail }));
  }

  /*
   * Puts the handles where the drawing that is visible has them. The one that is held stays where it was pulled to, until the
   * drawing has come after it.
   */
  function place() {
    if (held?.released && !busy()) {
      held = null;
    }
    const list = stage.querySelector("[data-live-handles]");
    const sheet = [...stage.querySelectorAll(".side-view__sheet")].find((one) => one.getBoundingClientRect().width > 0);
    over.style.display = list && sheet ? "" : "none";
    if (!list || !sheet) {
      return;
    }
    factor = Number(list.dataset.factor);
    over.setAttribute("viewBox", sheet.getAttribute("viewBox"));
    const box = sheet.getBoundingClientRect();
    const around = stage.getBoundingClientRect();
    Object.assign(over.style, {
      left: `${box.left - around.left}px`,
      top: `${box.top - around.top}px`,
      width: `${box.width}px`,
      height: `${box.height}px`,
    });
    const em = Number(sheet.getAttribute("font-size"));
    const there = new Set();
    for (const item of list.children) {
      there.add(item.dataset.key);
      draw(item, em, list.dataset.hint);
    }
    for (const [key, handle] of shown) {
      if (!there.has(key)) {
        handle.node.remove();
        shown.delete(key);
      }
    }
  }

  function draw(item, em, hint) {
    const { key, axes } = item.dataset;
    const handle = shown.get(key) ?? add(key);
    Object.assign(handle, {
      axes,
      label: item.textContent,
      origin: Number(item.dataset.origin),
      sense: Number(item.dataset.sense),
    });
    handle.node.dataset.axes = axes;
    handle.node.setAttribute("aria-label", `${handle.label}. ${hint}`);
    handle.reach.setAttribute("r", em * 1.1);
    handle.mark.setAttribute("r", em * (axes === "xz" ? 0.32 : 0.42));
    if (held?.handle !== handle) {
      at(handle, Number(item.dataset.x), Number(item.dataset.z));
    }
  }

  function at(handle, x, z) {
    Object.assign(handle, { x, z });
    handle.node.setAttribute("transform", `translate(${x} ${-z})`);
  }

  function add(key) {
    const node = document.createElementNS(SVG, "g");
    node.setAttribute("tabindex", "0");
    node.setAttribute("role", "button");
    node.setAttribute("class", "handle");
    node.dataset.handle = key;
    const reach = node.appendChild(document.createElementNS(SVG, "circle"));
    reach.setAttribute("class", "handle__reach");
    const mark = node.appendChild(document.createElementNS(SVG, "circle"));
    mark.setAttribute("class", "handle__mark");
    const handle = { key, node, reach, mark };
    node.addEventListener("pointerdown", grab);
    node.addEventListener("pointermove", drag);
    node.addEventListener("pointerup", release);
    node.addEventListener("pointercancel", release);
    node.addEventListener("keydown", (event) => press(event, handle));
    node.addEventListener("keyup", ({ key }) => key in ARROWS && release());
    node.addEventListener("blur", release);
    node.addEventListener("focus", () => say(handle.label));
    node.addEventListener("pointerenter", () => (held && !held.released) || say(handle.label));
    over.append(node);
    shown.set(key, handle);
    return handle;
  }

  /*
   * Handles that stand close together overlap: the nearest one is meant. The drawing may be fitted anew while it is pulled: the
   * pointer goes on meaning what it meant when it was pressed.
   */
  function grab(event) {
    if (event.button !== 0) {
      return;
    }
    event.preventDefault();
    const toSheet = over.getScreenCTM().inverse();
    const start = new DOMPoint(event.clientX, event.clientY).matrixTransform(toSheet);
    const off = (handle) => Math.hypot(handle.x - start.x, handle.z + start.y);
    const handle = [...shown.values()].reduce((nearest, one) => (off(one) < off(nearest) ? one : nearest));
    handle.node.focus();
    handle.node.setPointerCapture(event.pointerId);
    held = { handle, toSheet, offX: handle.x - start.x, offZ: handle.z + start.y };
  }

  function drag(event) {
    if (!held?.toSheet || held.released) {
      return;
    }
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(held.toSheet);
    move(held.handle, point.x + held.offX, held.offZ - point.y, event.shiftKey);
  }

  function press(event, handle) {
    const way = ARROWS[event.key];
    if (!way || event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    held = { handle };
    const step = grain(event.shiftKey) * factor;
    move(handle, handle.x + way[0] * step, handle.z + way[1] * step, event.shiftKey);
  }

  /* A mm, or a ten-thousandth or so of the wheelbase of a sketch without dimension; a tenth of it with the modifier. */
  function grain(fine) {
    const whole = factor === 1 ? 1 : 10 ** Math.round(Math.log10(1 / factor));
    return fine ? whole / 10 : whole;
  }

  function rounded(value, fine) {
    const step = grain(fine);
    return Number((Math.round(value / step) * step).toFixed(6));
  }

  function move(handle, x, z, fine) {
    const across = handle.axes.includes("x");
    const up = handle.axes.includes("z");
    if (handle.axes === "xz") {
      const to = { x: rounded(x / factor, fine), z: rounded(z / factor, fine) };
      at(handle, to.x * factor, to.z * factor);
      say(`${handle.label}: x ${to.x}, z ${to.z} mm`);
      pull(handle.key, { x: `${to.x} mm`, z: `${to.z} mm` });
      return;
    }
    const place = across ? x : z;
    const to = rounded((handle.sense * (place - handle.origin)) / factor, fine);
    const there = handle.origin + handle.sense * to * factor;
    at(handle, across ? there : handle.x, up ? there : handle.z);
    say(`${handle.label}: ${to} mm`);
    pull(handle.key, { to: `${to} mm` });
  }

  function release() {
    if (held && !held.released) {
      held.released = true;
      tell("settle");
    }
  }
}
