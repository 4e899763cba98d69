/*
 * Looking closer at a chart that the server drew: zoom with the wheel, by dragging or with buttons, names as one points,
 * and the dots as one stop of the keyboard, walked with the arrow keys. Without script the chart prints as it is.
 */
const { d3 } = window;
const figure = document.querySelector("[data-scatter]");

if (d3 && figure) {
  const FRAME = { left: 76, right: 980, top: 14, bottom: 566 };
  const svg = d3.select(figure.querySelector("svg"));
  const zoomed = svg.select("[data-zoomed]");
  const said = figure.querySelector("[data-scatter-said]");
  const hint = said.textContent;
  const number = (name) => Number(figure.dataset[name]);
  const x = d3.scaleLinear([number("xFrom"), number("xTo")], [FRAME.left, FRAME.right]);
  const y = d3.scaleLinear([number("yFrom"), number("yTo")], [FRAME.bottom, FRAME.top]);
  const shapes = [...figure.querySelectorAll("[data-zoomed] > a")];

  const kept = new Map(
    [...figure.querySelectorAll("circle, .scatter__mark path, .scatter__names text")].map((part) => [part, placeOf(part)]),
  );

  function placeOf(part) {
    if (part.tagName === "path") {
      const [, px, py] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(part.getAttribute("transform"));
      return { x: Number(px), y: Number(py) };
    }
    const prefix = part.tagName === "circle" ? "c" : "";
    return { x: Number(part.getAttribute(`${prefix}x`)), y: Number(part.getAttribute(`${prefix}y`)) };
  }

  /* What is a size and no place keeps its size: dots, marks and names are moved, ellipses and squares are stretched. */
  const zoom = d3
    .zoom()
    .scaleExtent([1, 24])
    .extent([[FRAME.left, FRAME.top], [FRAME.right, FRAME.bottom]])
    .translateExtent([[FRAME.left, FRAME.top], [FRAME.right, FRAME.bottom]])
    .filter((event) => (event.type === "wheel" ? event.ctrlKey || document.activeElement === svg.node() || figure.matches(":focus-within") : !event.button))
    .on("zoom", ({ transform }) => {
      zoomed.attr("transform", transform);
      const back = 1 / transform.k;
      for (const [part, { x: px, y: py }] of kept) {
        part.setAttribute("transform", `translate(${px} ${py}) scale(${back}) translate(${-px} ${-py})${part.tagName === "path" ? ` translate(${px} ${py})` : ""}`);
      }
      axis("x", transform.rescaleX(x), (tick, at) => {
        tick.select("path").attr("d", `M${at} ${FRAME.top}V${FRAME.bottom + 6}`);
        tick.select("text").attr("x", at).attr("y", FRAME.bottom + 30).attr("text-anchor", "middle");
      });
      axis("y", transform.rescaleY(y), (tick, at) => {
        tick.select("path").attr("d", `M${FRAME.left - 6} ${at}H${FRAME.right}`);
        tick.select("text").attr("x", FRAME.left - 12).attr("y", at).attr("dy", "0.35em").attr("text-anchor", "end");
      });
    });

  function axis(name, scale, place) {
    const group = svg.select(`[data-axis=${name}]`);
    group.selectAll("*").remove();
    const words = scale.tickFormat(6);
    for (const value of scale.ticks(6)) {
      const tick = group.append("g");
      tick.append("path");
      tick.append("text").text(words(value));
      place(tick, scale(value));
    }
  }

  svg.call(zoom).on("dblclick.zoom", null);

  for (const button of figure.querySelectorAll("[data-zoom]")) {
    button.addEventListener("click", () => {
      if (button.dataset.zoom === "reset") {
        svg.call(zoom.transform, d3.zoomIdentity);
      } else {
        svg.call(zoom.scaleBy, button.dataset.zoom === "in" ? 1.6 : 1 / 1.6);
      }
    });
  }

  const walked = shapes
    .map((shape) => ({ shape, at: kept.get(shape.querySelector("circle, path")) }))
    .sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y)
    .map(({ shape }) => shape);
  walked.forEach((shape, i) => shape.setAttribute("tabindex", i === 0 ? "0" : "-1"));

  for (const shape of walked) {
    shape.addEventListener("focus", () => say(shape));
    shape.addEventListener("pointerenter", () => say(shape));
    shape.addEventListener("pointerleave", () => say(walked.includes(document.activeElement) ? document.activeElement : null));
    shape.addEventListener("keydown", walk);
  }

  function say(shape) {
    said.textContent = shape ? shape.getAttribute("aria-label") : hint;
  }

  function walk(event) {
    const steps = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };
    const here = walked.indexOf(event.currentTarget);
    const to = event.key === "Home" ? 0 : event.key === "End" ? walked.length - 1 : here + (steps[event.key] ?? NaN);
    if (walked[to]) {
      event.preventDefault();
      walked[here].setAttribute("tabindex", "-1");
      walked[to].setAttribute("tabindex", "0");
      walked[to].focus();
    }
  }
}
