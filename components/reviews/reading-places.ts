import type { ClipView, CorrectionView, ReadingView } from "@/server/api/reviews/shapes";
import { seenInRound } from "@/server/domain/reviews/shown-again";

/** A frame of a clip that is there to be shown. */
export interface FilmPlace {
  clip: ClipView;
  frame: number;
}

/** Where a correction is shown: on its frame, and where there is a new clip, old beside new. */
export interface CorrectionPlaces {
  /** The frame it is opened on: of this round where it was seen in it, else where it was given. Null without a film. */
  place: FilmPlace | null;
  /** The frame it was given on, and the same moment on the clip that came in reply. */
  pair: { older: FilmPlace; newer: FilmPlace } | null;
}

type Told = Pick<ReadingView, "clips" | "eventMarks"> & { round: Pick<ReadingView["round"], "id"> };

/**
 * Finds the frames of a correction. The new one is the frame on which it was judged; where nobody named one, that of
 * its moment on the reply of the same view.
 */
export function placesOf(correction: CorrectionView, told: Told): CorrectionPlaces {
  const given = filmPlace(told.clips, correction);
  const seen = filmPlace(told.clips, seenInRound(correction, told.round.id));
  const newer =
    seen !== null && seen.clip.id !== given?.clip.id ? seen : momentOnReply(correction, given, told);
  return {
    place: seen ?? given,
    pair: given !== null && newer !== null ? { older: given, newer } : null,
  };
}

/** A frame of one of the clips, when its film is there. */
export function filmPlace(
  clips: readonly ClipView[],
  { clipId, frame }: { clipId: string | null; frame: number | null },
): FilmPlace | null {
  const clip = clips.find((each) => each.id === clipId);
  if (clip === undefined || frame === null || clip.state !== "ready") return null;
  return frame < clip.frameTimesMs.length ? { clip, frame } : null;
}

function momentOnReply(correction: CorrectionView, given: FilmPlace | null, told: Told): FilmPlace | null {
  if (given === null) return null;
  const reply = told.clips.find(
    (clip) =>
      clip.part === "reply" &&
      clip.roundId === told.round.id &&
      clip.view === given.clip.view &&
      clip.id !== given.clip.id,
  );
  const mark = told.eventMarks.find((each) => each.clipId === reply?.id && each.event === correction.event);
  return reply === undefined || mark === undefined
    ? null
    : filmPlace(told.clips, { clipId: reply.id, frame: mark.frame });
}
