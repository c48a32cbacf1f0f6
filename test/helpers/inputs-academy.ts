import { STARTING_LIBRARY } from "@/server/domain/mechanics/starting-library";
import { STARTING_SETTINGS } from "@/server/domain/people/academy-settings";
import { WHO } from "./academy";
import type { AthleteRecord } from "./athlete-record";
import type { ExampleInput } from "./example-input";
import { OWN_BOOK } from "./own-book";
import { OWN_TEMPLATE } from "./own-template";
import { ownersOf } from "./owners";

const nothing = () => ({});
const PHRASE = "four unrelated words here";

function checkpointWords() {
  const { id, active, phase, event, ...words } = STARTING_LIBRARY[0] ?? ({} as never);
  return { ...words, name: "A checkpoint of our own" };
}

function athleteWords(record: AthleteRecord) {
  return {
    givenName: "New",
    familyName: "Name",
    email: null,
    phone: null,
    bornOn: record.athleteId === WHO.adult.athleteId ? "2007-08-20" : "2013-04-04",
    throws: "left",
    heightCm: 150,
    homeSiteId: WHO.site,
    ruleBookId: "usa-baseball-2018",
  };
}

const NEW_ADULT = { givenName: "New", familyName: "Adult", email: "new.adult@test.example", phone: null };

/** The account, the people and the academy's own settings. */
export const ACADEMY_INPUTS: Record<string, ExampleInput> = {
  "account.academyExists": nothing,
  "account.link": () => ({ token: "a-token-that-is-not-on-record" }),
  "account.useLink": () => ({ token: "a-token-that-is-not-on-record", password: PHRASE }),
  "account.askReset": () => ({ email: "somebody@test.example" }),
  "account.startAcademy": () => ({
    academyName: "Second academy",
    currency: "USD",
    siteName: "Main site",
    zone: "America/New_York",
    givenName: "First",
    familyName: "Admin",
    email: "first@test.example",
    isCoach: true,
    password: PHRASE,
  }),
  "account.me": nothing,
  "account.signIns": nothing,
  "account.endSignIn": () => ({ signInId: "sgn_of_nobody" }),

  "academy.overview": nothing,
  "academy.settings": nothing,
  "academy.saveSettings": () => ({ settings: { ...STARTING_SETTINGS, name: "New name" }, version: 1 }),
  "academy.record": () => ({ page: 1 }),
  "notices.list": () => ({ page: 1, state: null }),
  "notices.retry": (record) => ({ noticeIds: [`ntc_${record.athleteId}`] }),
  "checkpoints.list": nothing,
  "checkpoints.add": () => ({ ...checkpointWords(), phase: "stride", event: "front_foot_contact" }),
  "checkpoints.edit": () => ({ ...checkpointWords(), id: STARTING_LIBRARY[0]?.id, version: 1 }),
  "checkpoints.setActive": () => ({ id: STARTING_LIBRARY[0]?.id, version: 1, active: false }),
  "reviewTemplates.list": nothing,
  "reviewTemplates.add": () => ({ template: OWN_TEMPLATE }),
  "reviewTemplates.edit": () => ({ id: "tpl_own", version: 1, template: OWN_TEMPLATE }),
  "reviewTemplates.setActive": () => ({ id: "tpl_own", version: 1, active: false }),
  "hours.list": nothing,
  "hours.setWeek": () => ({
    coachPersonId: WHO.coach,
    week: [{ siteId: WHO.site, weekday: 2, startsMin: 900, endsMin: 1200 }],
  }),
  "hours.addAbsence": () => ({
    coachPersonId: WHO.coach,
    siteId: WHO.site,
    firstDay: "2027-01-04",
    lastDay: "2027-01-08",
  }),
  "hours.removeAbsence": () => ({ absenceId: "abs_coach" }),
  "rates.list": nothing,
  "rates.setPrice": () => ({ kind: "lesson", priceCents: 9000, effectiveFrom: "2027-01-01" }),
  "rates.remove": () => ({ rateId: "rate_group" }),
  "ruleBooks.list": nothing,
  "ruleBooks.book": () => ({ bookId: OWN_BOOK.id }),
  "ruleBooks.copy": () => ({ bookId: OWN_BOOK.id, name: "Another copy" }),
  "ruleBooks.save": () => ({ bookId: OWN_BOOK.id, version: 1, book: OWN_BOOK }),
  "ruleBooks.setArchived": () => ({ bookId: OWN_BOOK.id, version: 1, isArchived: true }),
  "ruleBooks.confirm": () => ({ bookId: OWN_BOOK.id }),
  "ruleBooks.preview": () => ({ book: OWN_BOOK }),
  "ruleBooks.setReading": () => ({ countedKinds: ["bullpen"], version: 1 }),
  "ruleBooks.overrides": (record) => ({ athleteId: record.athleteId }),
  "ruleBooks.overrideLimit": (record) => ({
    athleteId: record.athleteId,
    day: "2026-11-28",
    pitches: 200,
    reason: "The last game of the season",
  }),
  "sites.list": nothing,
  "sites.add": () => ({ name: "South site", zone: "America/Chicago", address: "2 Mill Lane" }),
  "sites.edit": () => ({
    siteId: WHO.site,
    name: "North site",
    zone: "America/New_York",
    address: "3 Mill Lane",
  }),
  "sites.retire": () => ({ siteId: WHO.site }),
  "sites.addLane": () => ({ siteId: WHO.site, name: "Lane 9", kind: "mound" }),
  "sites.retireLane": () => ({ laneId: WHO.flatLane }),
  "sites.close": () => ({ siteId: WHO.site, closedOn: "2026-12-25", reason: "Holiday" }),
  "sites.reopen": () => ({ closureId: "clo_holiday" }),
  "sites.setWeek": () => ({ siteId: WHO.site, week: [{ weekday: 2, opensMin: 600, closesMin: 1200 }] }),

  "consent.state": (record) => ({ athleteId: record.athleteId }),
  "consent.decide": (record) => ({ athleteId: record.athleteId, kind: "withdrawn" }),
  "consent.grantGuardians": (record) => ({ athleteId: record.athleteId, grants: true }),
  "families.addAthlete": (record) => ({
    ...athleteWords(record),
    bornOn: "2013-04-04",
    coachPersonId: WHO.coach,
    guardians: [{ personId: WHO.guardian }],
  }),
  "families.editAthlete": (record) => ({ ...athleteWords(record), athleteId: record.athleteId, version: 1 }),
  "families.editArm": (record) => ({
    athleteId: record.athleteId,
    throws: "left",
    heightCm: 151,
    version: 1,
  }),
  "families.assignCoach": (record) => ({ athleteId: record.athleteId, coachPersonId: WHO.otherCoach }),
  "families.leave": (record) => ({ athleteId: record.athleteId, leftOn: "2026-11-25", version: 1 }),
  "families.comeBack": (record) => ({ athleteId: record.athleteId, version: 1 }),
  "families.addGuardian": (record) => ({ athleteId: record.athleteId, guardian: NEW_ADULT }),
  "families.endGuardianship": (record) => ({
    athleteId: record.athleteId,
    guardianPersonId: ownersOf(record.athleteId).guardian ?? WHO.guardian,
  }),
  "invitations.send": (record) => ({ personId: record.personId }),
  "invitations.disable": () => ({ personId: WHO.otherGuardian }),
  "invitations.enable": () => ({ personId: WHO.otherGuardian }),
  "people.list": () => ({ search: "", kind: null, page: 1 }),
  "people.choices": nothing,
  "people.person": (record) => ({ personId: record.personId }),
  "people.addStaff": () => ({ ...NEW_ADULT, roles: ["coach"] }),
  "people.edit": () => ({
    personId: WHO.guardian,
    givenName: "Gwendolyn",
    familyName: "Marsh",
    email: "gwendolyn@test.example",
    phone: null,
  }),
  "people.grantRole": () => ({ personId: WHO.otherCoach, role: "admin" }),
  "people.endRole": () => ({ personId: WHO.otherCoach, role: "coach" }),
};
