/** Small signs drawn in the text's own colour; each stands beside or inside something that has a name. */
const paths = {
  down: "M3 5l4 4 4-4",
  up: "M3 9l4-4 4 4",
  back: "M9 3L5 7l4 4",
  forward: "M5 3l4 4-4 4",
  minus: "M3 7h8",
  plus: "M3 7h8M7 3v8",
  close: "M3 3l8 8M11 3l-8 8",
  tick: "M2.5 7.5l3 3 6-7",
  search: "M6 2.5a3.5 3.5 0 1 1 0 7a3.5 3.5 0 0 1 0-7M8.6 8.6l3.4 3.4",
  calendar: "M2.5 3.5h9v8h-9zM2.5 6h9M5 2v2.5M9 2v2.5",
  menu: "M2 4h10M2 7h10M2 10h10",
  halfDisc: "M7 2a5 5 0 1 0 0 10a5 5 0 0 0 0-10M7 2v10M7.8 4h2M7.8 6h3.4M7.8 8h3.4M7.8 10h2",
} as const;

/** The signs there are. */
export type IconName = keyof typeof paths;

/** One sign, 14 px square unless the place around it says otherwise; hidden from screen readers. */
export function Icon({ name }: { name: IconName }) {
  return (
    <svg
      viewBox="0 0 14 14"
      width="14"
      height="14"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      aria-hidden="true"
    >
      <path d={paths[name]} />
    </svg>
  );
}
