/**
 * Draws what a video shows onto a canvas no wider than asked.
 * @returns null when the browser gives no picture
 */
export function drawPicture(video: HTMLVideoElement, maxWidthPx: number): HTMLCanvasElement | null {
  const { videoWidth, videoHeight } = video;
  if (videoWidth === 0 || videoHeight === 0) return null;
  const scale = Math.min(1, maxWidthPx / videoWidth);
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  const pen = canvas.getContext("2d");
  if (!pen) return null;
  pen.drawImage(video, 0, 0, canvas.width, canvas.height);
  return canvas;
}
