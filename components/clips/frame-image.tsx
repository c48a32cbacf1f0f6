/** One frame of a clip, drawn in this browser; what it shows is said beside it. It is not dragged about: a press opens it. */
export function FrameImage({ address, className }: { address: string; className?: string | undefined }) {
  // biome-ignore lint/performance/noImgElement: drawn from the film in this browser, there is no file to optimise
  return <img src={address} alt="" draggable={false} className={className} />;
}
