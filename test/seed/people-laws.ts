import { expect, it } from "vitest";
import { hasConsent } from "@/server/domain/people/consent";
import { maySignIn } from "@/server/domain/people/person";
import { isOwed } from "@/server/domain/reviews/round-state";
import { ageOn } from "@/server/domain/time/calendar-day";
import { type BuiltDay, groupedBy } from "./demo-days";

/** Who is there, who may sign in, who has agreed to what. */
export function describePeople({ rows, today }: BuiltDay): void {
  const personBy = (name: string) =>
    rows.account.find(({ email }) => email === `${name}@slabside.example`)?.personId ?? "";

  it("has athletes of 8 to 20, each with a coach, and a guardian for every minor", () => {
    const guardians = groupedBy(rows.guardianship, ({ athleteId }) => athleteId);
    const ages = rows.athlete.map(({ bornOn }) => ageOn(bornOn, today));
    expect([Math.min(...ages), Math.max(...ages)]).toEqual([8, 20]);
    for (const { id, coachPersonId } of rows.athlete) {
      expect(coachPersonId).toBeTruthy();
      expect(guardians(id).length).toBeGreaterThanOrEqual(1);
    }
    expect(rows.athlete.some(({ id }) => guardians(id).length === 2)).toBe(true);
  });

  it("has an account for every adult and none for a child under 13", () => {
    const withAccount = new Set(rows.account.map(({ personId }) => personId));
    for (const { personId, bornOn } of rows.athlete) {
      expect(withAccount.has(personId)).toBe(maySignIn(bornOn, today));
    }
    const adults = [
      ...rows.guardianship.map((row) => row.guardianPersonId),
      ...rows.staffRole.map((row) => row.personId),
    ];
    expect(adults.filter((id) => !withAccount.has(id))).toEqual([]);
  });

  it("has the four sign-ins with something to show: an admin, a busy coach, a guardian of two, an athlete", () => {
    const rolesOf = groupedBy(rows.staffRole, ({ personId }) => personId);
    expect(rolesOf(personBy("admin")).map(({ role }) => role)).toEqual(["admin"]);
    expect(rolesOf(personBy("coach")).map(({ role }) => role)).toEqual(["coach"]);
    const taken = rows.round.filter(
      ({ coachPersonId, state }) => coachPersonId === personBy("coach") && isOwed(state),
    );
    expect(taken.length).toBeGreaterThanOrEqual(3);
    const wards = rows.guardianship
      .filter(({ guardianPersonId }) => guardianPersonId === personBy("guardian"))
      .map(({ athleteId }) => rows.athlete.find(({ id }) => id === athleteId));
    expect(wards.map((ward) => ageOn(ward?.bornOn ?? "", today)).sort()).toEqual([12, 15]);
    const young = wards.find((ward) => ageOn(ward?.bornOn ?? "", today) === 12);
    expect(rows.round.some(({ athleteId, state }) => athleteId === young?.id && state === "sent")).toBe(true);
    const self = rows.athlete.find(({ personId }) => personId === personBy("athlete"));
    expect(rows.round.filter(({ athleteId }) => athleteId === self?.id).length).toBeGreaterThanOrEqual(7);
  });

  it("has a coach who is a parent of an athlete as well", () => {
    const coaches = new Set(rows.staffRole.map(({ personId }) => personId));
    expect(rows.guardianship.filter((row) => coaches.has(row.guardianPersonId))).toHaveLength(1);
  });

  it("has everybody's consent but one, and no clip of that one", () => {
    const consentOf = groupedBy(rows.consent, ({ athleteId }) => athleteId);
    const without = rows.athlete.filter(({ id }) => !hasConsent(consentOf(id), "video"));
    expect(without).toHaveLength(1);
    expect(rows.clip.filter(({ athleteId }) => athleteId === without[0]?.id)).toEqual([]);
  });

  it("tells no minor anything that a guardian is not told at the same instant", () => {
    const guardians = groupedBy(rows.guardianship, ({ athleteId }) => athleteId);
    const toldAt = groupedBy(rows.notice, ({ kind, createdAtMs }) => `${kind} ${createdAtMs}`);
    for (const { id, personId, bornOn } of rows.athlete.filter((row) => ageOn(row.bornOn, today) < 18)) {
      expect(ageOn(bornOn, today)).toBeLessThan(18);
      for (const { kind, createdAtMs } of rows.notice.filter(({ toPersonId }) => toPersonId === personId)) {
        const told = toldAt(`${kind} ${createdAtMs}`).map(({ toPersonId }) => toPersonId);
        expect(guardians(id).every(({ guardianPersonId }) => told.includes(guardianPersonId))).toBe(true);
      }
    }
  });
}
