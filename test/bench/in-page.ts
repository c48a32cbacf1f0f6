/* Everything here runs in the page and knows nothing of this file but its own function. */

/**
 * Presses a key within one redraw and counts the redraws until the picture is another: 1 when it is painted in time for
 * the next.
 */
export async function redrawsUntilNext(figure: Element, key: string): Promise<number> {
  const context = new OffscreenCanvas(64, 48).getContext("2d", { willReadFrequently: true });
  const look = () => {
    const picture = figure.querySelector<HTMLCanvasElement | HTMLVideoElement>("[data-shown]");
    if (!picture || !context) throw new Error("There is no picture.");
    context.drawImage(picture, 0, 0, 64, 48);
    return context.getImageData(0, 0, 64, 48).data.join();
  };
  const redraw = () => new Promise((next) => requestAnimationFrame(next));
  await redraw();
  const before = look();
  window.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, cancelable: true }));
  let count = 0;
  do {
    await redraw();
    count += 1;
  } while (look() === before && count < 300);
  return count;
}

/** How long the player takes from being asked for a frame to saying that it is on the picture, in milliseconds. */
export async function ownSeekMs(figure: Element, frame: number): Promise<number> {
  const slider = figure.querySelector<HTMLInputElement>("input[type=range]");
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
  const startMs = performance.now();
  set?.call(slider, String(frame));
  slider?.dispatchEvent(new Event("input", { bubbles: true }));
  while (figure.getAttribute("data-frame") !== String(frame) && performance.now() - startMs < 5000) {
    await new Promise((next) => requestAnimationFrame(next));
  }
  return performance.now() - startMs;
}

/** The same seek by a video element of the same film and size and nothing else, until it has presented the picture. */
export async function bareSeekMs(figure: Element, timeS: number): Promise<number> {
  let video = document.querySelector<HTMLVideoElement>("body > video");
  if (!video) {
    video = document.createElement("video");
    video.src = figure.querySelector("video")?.currentSrc ?? "";
    video.muted = true;
    video.preload = "auto";
    const { width, height } = figure.querySelector("video")?.getBoundingClientRect() ?? new DOMRect();
    video.style.cssText = `position: fixed; right: 0; bottom: 0; width: ${width}px; height: ${height}px`;
    const loaded = new Promise((done) => video?.addEventListener("loadeddata", done, { once: true }));
    document.body.append(video);
    await loaded;
  }
  const film = video;
  const startMs = performance.now();
  const presented = new Promise<void>((done, fail) => {
    setTimeout(() => fail(new Error("The bare element did not show the frame.")), 5000);
    const next = () =>
      film.requestVideoFrameCallback((_nowMs, { mediaTime }) => {
        if (Math.abs(mediaTime - timeS) < 1 / 60) done();
        else next();
      });
    next();
  });
  film.currentTime = timeS;
  await presented;
  await new Promise((next) => requestAnimationFrame(next));
  return performance.now() - startMs;
}

/** How long it takes from a click on a link until the time line of the page it leads to answers a key, in milliseconds. */
export async function interactiveMs(link: Element): Promise<number> {
  const redraw = () => new Promise((next) => requestAnimationFrame(next));
  const readOut = () => document.querySelector("[role=application] ~ [aria-live]")?.textContent ?? "";
  const startMs = performance.now();
  (link as HTMLElement).click();
  let unread: string | null = null;
  while (performance.now() - startMs < 20_000) {
    const line = document.querySelector<HTMLElement>("[role=application]");
    unread ??= line ? readOut() : null;
    if (line && readOut() !== unread) return performance.now() - startMs;
    line?.focus();
    line?.dispatchEvent(new KeyboardEvent("keydown", { key: "End", bubbles: true, cancelable: true }));
    await redraw();
  }
  throw new Error("The time line did not answer.");
}
