// A tall drawing in strips below each other: only those in view are drawn, the others when they come into view.

const STRIP = 400;
// drawn beyond the window's edges, so that scrolling shows no gap
const MARGIN = 200;

export class Tiles {
  constructor(place) {
    this.place = place;
    this.strips = [];
    this.draw = () => {};
    window.addEventListener("scroll", () => this.catchUp(), { passive: true });
    window.addEventListener("resize", () => this.catchUp());
    window.addEventListener("beforeprint", () => this.strips.forEach((strip) => this.drawIf(strip, true)));
  }

  /** Fits the strips to this size, in CSS pixels. */
  size(width, height, ratio) {
    this.ratio = ratio;
    const count = Math.ceil(height / STRIP);
    while (this.strips.length < count) {
      const canvas = document.createElement("canvas");
      canvas.setAttribute("aria-hidden", "true");
      this.place.append(canvas);
      this.strips.push({ canvas, pen: canvas.getContext("2d", { alpha: false }) });
    }
    while (this.strips.length > count) this.strips.pop().canvas.remove();
    this.strips.forEach((strip, i) => {
      strip.y = i * STRIP;
      strip.h = Math.min(STRIP, height - strip.y);
      strip.canvas.width = Math.round(width * ratio);
      strip.canvas.height = Math.round(strip.h * ratio);
      strip.canvas.style.width = `${width}px`;
      strip.canvas.style.height = `${strip.h}px`;
      strip.stale = true;
    });
  }

  /**
   * Draws anew what is in view.
   * @param draw called with a pen, and from where to where it draws, as if the drawing were one
   */
  redraw(draw) {
    this.draw = draw;
    for (const strip of this.strips) strip.stale = true;
    this.catchUp();
  }

  catchUp() {
    const top = this.place.getBoundingClientRect().top;
    for (const strip of this.strips) {
      const y = top + strip.y;
      this.drawIf(strip, y < window.innerHeight + MARGIN && y + strip.h > -MARGIN);
    }
  }

  drawIf(strip, wanted) {
    if (!wanted || !strip.stale) return;
    strip.stale = false;
    strip.pen.setTransform(this.ratio, 0, 0, this.ratio, 0, -strip.y * this.ratio);
    this.draw(strip.pen, strip.y, strip.y + strip.h);
  }
}
