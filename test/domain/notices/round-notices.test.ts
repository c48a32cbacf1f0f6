import { describe, expect, it } from "vitest";
import {
  arrivalNotices,
  lapseNotice,
  retakeNotice,
  withdrawalNotice,
} from "@/server/domain/notices/round-notices";

const givenName = "Kit";

describe("a notice about a round", () => {
  it("says of a clip and of a reply by when it is owed, to the family and to the coach", () => {
    const due = "Fri 27 Nov 17:00 (North site)";
    const clip = arrivalNotices({ givenName, isReply: false, due });
    expect([clip.family.kind, clip.family.subject]).toEqual(["clip_received", "Kit's clip is in"]);
    expect(clip.family.body).toContain(`looked at by ${due}`);
    const reply = arrivalNotices({ givenName, isReply: true, due });
    expect([reply.coach.kind, reply.coach.subject]).toEqual([
      "answer_received",
      "Kit: a reply is due by Fri 27 Nov 17:00 (North site)",
    ]);
  });

  it("asks for another clip from the arm's first free day, and for none while pain stops the arm", () => {
    const reason = "Too dark.";
    const window = { replyFrom: "2026-11-27", lapsesOn: "2026-12-10" };
    expect(retakeNotice({ givenName, reason, window }).body).toContain(
      "from Fri 27 Nov on, the first day the book leaves the arm free, by Wed 9 Dec at the latest",
    );
    const stopped = retakeNotice({ givenName, reason, window: { replyFrom: null, lapsesOn: null } });
    expect(stopped.body).toContain("no throwing before that");
  });

  it("says who withdrew a round and why, and which day was the last for a clip", () => {
    expect(withdrawalNotice({ givenName, byName: "Gwen Marsh", reason: "Wrong clip." }).body).toContain(
      "Gwen Marsh withdrew it: Wrong clip.",
    );
    expect(lapseNotice({ givenName, lapsesOn: "2026-12-10" }).body).toContain("was Wed 9 Dec,");
  });
});
