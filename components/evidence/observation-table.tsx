import Link from "next/link";
import { roomAddress } from "@/components/reviews/room-address";
import { type Column, Table } from "@/components/ui/table";
import { PITCH_TYPE_WORDS } from "@/server/domain/clips/clip";
import { dayInWords } from "@/server/domain/time/words";
import type { SeriesView } from "./plot-days";

type Row = SeriesView["observations"][number];

const COLUMNS: readonly Column<Row>[] = [
  {
    key: "day",
    heading: "Filmed",
    isRowHeading: true,
    cell: ({ day }) => dayInWords(day, { withYear: true }),
  },
  { key: "value", heading: "Seen", cell: ({ words }) => words },
  { key: "pitch", heading: "Pitch", cell: ({ pitchType }) => pitchWords(pitchType) },
  { key: "coach", heading: "By", cell: ({ coachName }) => coachName },
  { key: "repeat", heading: "Look", cell: ({ isRepeat }) => (isRepeat ? "again, blind" : "first") },
  { key: "frame", heading: "Frame", cell: ({ place }) => <FrameOf place={place} /> },
];

/** Every look at a series, the latest first. */
export function ObservationTable({
  name,
  observations,
}: { name: string } & Pick<SeriesView, "observations">) {
  return (
    <Table
      caption={`${name}, every look`}
      isCaptionHidden
      columns={COLUMNS}
      rows={observations.toReversed()}
      rowKey={(row) => row.id}
    />
  );
}

function FrameOf({ place }: Pick<Row, "place">) {
  if (place === null) return "in person";
  const words = place.frame === null ? "the clip" : `frame ${place.frame + 1}`;
  return place.isKept ? <Link href={roomAddress(place)}>{words}</Link> : `${words}, film gone`;
}

function pitchWords(pitchType: string | null): string {
  if (pitchType === null) return "not said";
  return PITCH_TYPE_WORDS[pitchType as keyof typeof PITCH_TYPE_WORDS] ?? pitchType;
}
