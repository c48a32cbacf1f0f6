import { describe, expect, it } from "vitest";
import { replyOffer } from "@/server/domain/reviews/reply-offer";
import { ROUND_STATES } from "@/server/domain/reviews/round-state";

const sent = { state: "sent" as const, replyFrom: "2026-11-04", lapsesOn: "2026-11-23", today: "2026-11-10" };

describe("replyOffer", () => {
  it("is open from the first free day to the last day before the round lapses", () => {
    expect(replyOffer(sent)).toEqual({
      isWanted: true,
      isOpen: true,
      words: "Please send it by Sun 22 Nov.",
    });
    expect(replyOffer({ ...sent, today: "2026-11-04" }).isOpen).toBe(true);
    expect(replyOffer({ ...sent, today: "2026-11-22" }).isOpen).toBe(true);
  });

  it("waits for the arm's first free day and says which it is", () => {
    expect(replyOffer({ ...sent, today: "2026-11-03" })).toEqual({
      isWanted: true,
      isOpen: false,
      words: "From Wed 4 Nov, the arm's first free day by the book, and by Sun 22 Nov.",
    });
  });

  it("is over on the day the round lapses, and begins a new round", () => {
    expect(replyOffer({ ...sent, today: "2026-11-23" })).toMatchObject({ isWanted: false, isOpen: false });
  });

  it("asks for none while pain is on record", () => {
    expect(replyOffer({ ...sent, replyFrom: null, lapsesOn: null })).toMatchObject({
      isWanted: true,
      isOpen: false,
      words: expect.stringContaining("pain"),
    });
  });

  it("stays open where there is no day to lapse on", () => {
    expect(replyOffer({ ...sent, lapsesOn: null })).toMatchObject({
      isOpen: true,
      words: "Any day from now.",
    });
  });

  it("is made after a review and after a retake, in no other state", () => {
    const wanted = ROUND_STATES.filter((state) => replyOffer({ ...sent, state }).isWanted);
    expect(wanted).toEqual(["sent", "retake"]);
  });
});
