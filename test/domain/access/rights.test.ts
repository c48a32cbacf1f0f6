import { describe, expect, it } from "vitest";
import { type Actor, type AthleteScope, type Relation, relationsOf } from "@/server/domain/access/relation";
import { type Action, may, RIGHTS } from "@/server/domain/access/rights";

const TODAY = "2026-11-25";

const athlete: AthleteScope = {
  athleteId: "ath_1",
  personId: "per_1",
  bornOn: "2010-03-02",
  zone: "America/New_York",
  coachPersonId: "per_coach",
  grantsGuardians: false,
};

function actor(more: Partial<Actor>): Actor {
  return {
    personId: "per_x",
    signInId: "sgn_x",
    givenName: "X",
    roles: [],
    athleteId: null,
    guardianOf: [],
    ...more,
  };
}

function relations(who: Actor | null, of: Partial<AthleteScope> | null = {}): Relation[] {
  return [...relationsOf(who, of && { ...athlete, ...of }, TODAY)].sort();
}

describe("what a person is to an athlete", () => {
  it("is anyone when not signed in, whoever is asked about", () => {
    expect(relations(null)).toEqual(["anyone"]);
  });

  it("is a guardian until the eighteenth birthday, and after it one who looks on only when granted", () => {
    const guardian = actor({ guardianOf: ["ath_1"] });
    const [minor, grown] = [{ bornOn: "2008-11-26" }, { bornOn: "2008-11-25" }];
    const known = ["anyone", "signed_in"];
    expect(relations(guardian, minor)).toEqual(["anyone", "guardian", "signed_in"]);
    expect(relations(guardian, { ...minor, grantsGuardians: true })).toEqual(relations(guardian, minor));
    expect(relations(guardian, grown)).toEqual(known);
    expect(relations(guardian, { ...grown, grantsGuardians: true })).toEqual([
      ...["anyone", "granted_guardian", "signed_in"],
    ]);
  });

  it("is of age from the eighteenth birthday on", () => {
    const self = actor({ athleteId: "ath_1" });
    expect(relations(self, { bornOn: "2008-11-26" })).toContain("self_minor");
    expect(relations(self, { bornOn: "2008-11-25" })).toContain("self_of_age");
  });

  it("adds up: a coach who is a parent is both, and an admin who coaches too", () => {
    const both = actor({ personId: "per_coach", roles: ["coach", "admin"], guardianOf: ["ath_1"] });
    expect(relations(both)).toEqual(["admin", "anyone", "assigned_coach", "coach", "guardian", "signed_in"]);
    expect(relations(actor({ roles: ["coach"] }))).toContain("other_coach");
  });

  it("is nothing more than signed in to another family's athlete", () => {
    expect(relations(actor({ guardianOf: ["ath_2"], athleteId: "ath_3" }))).toEqual(["anyone", "signed_in"]);
  });
});

describe("the table of rights", () => {
  it("lets nobody open a report to strangers but who decides for the athlete, and staff and they end it", () => {
    const each = (action: Action) => RIGHTS[action] as readonly Relation[];
    expect(each("report.share")).toEqual(["self_of_age", "guardian"]);
    expect([...each("report.revoke")].sort()).toEqual(
      [...each("report.share"), "assigned_coach", "other_coach", "admin"].sort(),
    );
    expect(each("report.write")).toEqual(["assigned_coach", "other_coach"]);
  });

  it("lets a family act for its own athlete and leaves decisions to the guardian or an athlete of age", () => {
    const minor = new Set<Relation>(["anyone", "signed_in", "self_minor"]);
    expect(may("clip.send", minor)).toBe(true);
    expect(may("session.book", minor)).toBe(false);
    expect(may("consent.decide", minor)).toBe(false);
    expect(may("session.book", new Set<Relation>(["self_of_age"]))).toBe(true);
  });

  it("lets a guardian whom an athlete of age grants the view see and help, and decide nothing", () => {
    const granted = new Set<Relation>(["anyone", "signed_in", "granted_guardian"]);
    for (const action of ["athlete.view", "review.read", "clip.watch", "session.view"] as const) {
      expect(may(action, granted), action).toBe(true);
    }
    const decisions = ["consent.decide", "session.book", "session.change", "calendar.findTimes"] as const;
    for (const action of [...decisions, "round.withdraw", "pain.clear", "guardians.grant"] as const) {
      expect(may(action, granted), action).toBe(false);
    }
  });

  it("lets no coach and no admin clear pain or decide on consent", () => {
    const staff = new Set<Relation>([
      "anyone",
      "signed_in",
      "admin",
      "coach",
      "assigned_coach",
      "other_coach",
    ]);
    expect(may("pain.clear", staff)).toBe(false);
    expect(may("consent.decide", staff)).toBe(false);
  });

  it("opens nothing to people who are not signed in but the way in, and a report that a link was made for", () => {
    const open = (Object.keys(RIGHTS) as Action[]).filter((action) =>
      may(action, new Set<Relation>(["anyone"])),
    );
    expect(open.sort()).toEqual([
      "account.askReset",
      "account.signIn",
      "account.startAcademy",
      "account.useLink",
      "report.open",
    ]);
  });
});
