/** A small sign inside a control that has a name. */
export function ControlSign({ path }: { path: string }) {
  return (
    <svg
      viewBox="0 0 16 16"
      width="16"
      height="16"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.6"
      aria-hidden="true"
    >
      <path d={path} strokeLinejoin="round" strokeLinecap="round" />
    </svg>
  );
}
