/** One frame of a clip, drawn in this browser; what it shows is said beside it. */
export function FrameImage({ address, className }: { address: string; className?: string | undefined }) {
  // biome-ignore lint/performance/noImgElement: drawn from the film in this browser, there is no file to optimise
  return <img src={address} alt="" className={className} />;
}
