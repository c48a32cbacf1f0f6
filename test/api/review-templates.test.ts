import { beforeEach, describe, expect, it } from "vitest";
import { makeAcademy, type TestAcademy, WHO } from "../helpers/academy";
import { OWN_TEMPLATE } from "../helpers/own-template";
import { because, type Caller, refuses } from "../helpers/refuses";
import { takenRound } from "../helpers/review-desk";

let academy: TestAcademy;
beforeEach(async () => {
  academy = await makeAcademy();
});

const add = async (template = OWN_TEMPLATE) =>
  (await (await academy.as(WHO.admin)).reviewTemplates.add({ template })).templateId;
const listed = async () => (await academy.as(WHO.coach)).reviewTemplates.list({});

describe("templates of the usual review", () => {
  it("are added, changed and put aside by an admin and read by every coach", async () => {
    const id = await add();
    const admin = await academy.as(WHO.admin);
    const longer = { ...OWN_TEMPLATE, name: "First look", toAge: 14 };
    await admin.reviewTemplates.edit({ id, version: 1, template: longer });
    expect(await listed()).toEqual([{ id, ...longer, active: true, version: 2 }]);
    await admin.reviewTemplates.setActive({ id, version: 2, active: false });
    expect(await listed()).toMatchObject([{ active: false, version: 3 }]);
    await admin.reviewTemplates.setActive({ id, version: 3, active: true });
    const record = (await admin.academy.record({ page: 1 })).rows.map(({ action }) => action);
    expect(record.toSorted()).toEqual([
      "template.added",
      "template.edited",
      "template.offered",
      "template.put_aside",
    ]);
  });

  it("refuse a change over another, a strange checkpoint and a strange id, and write nothing", async () => {
    const id = await add();
    const [keep, correction] = OWN_TEMPLATE.lines;
    if (!keep || !correction) throw new Error("The template has two lines.");
    const strange = { ...OWN_TEMPLATE, lines: [keep, { ...correction, checkpointId: "no-such-thing" }] };
    const changes: [string, (api: Caller) => Promise<unknown>, ReturnType<typeof because>][] = [
      [
        "over another",
        (api) => api.reviewTemplates.setActive({ id, version: 2, active: false }),
        because("changed_meanwhile"),
      ],
      [
        "a strange id",
        (api) => api.reviewTemplates.edit({ id: "tpl_ghost", version: 1, template: OWN_TEMPLATE }),
        because("not_found"),
      ],
      ["a strange checkpoint", (api) => api.reviewTemplates.add({ template: strange }), because("not_found")],
    ];
    for (const [, call, why] of changes) await refuses(academy, WHO.admin, call, why);
  });

  it("are changed by no coach", async () => {
    const id = await add();
    const aside = (api: Caller) => api.reviewTemplates.setActive({ id, version: 1, active: false });
    await refuses(academy, WHO.coach, aside, because("not_found"));
  });

  it("are in the room for an athlete of their age, the narrowest first, and not once put aside", async () => {
    const narrow = await add();
    await add({ ...OWN_TEMPLATE, name: "Everybody", fromAge: 4, toAge: 99 });
    await add({ ...OWN_TEMPLATE, name: "Grown", fromAge: 18, toAge: 99 });
    const aside = await add({ ...OWN_TEMPLATE, name: "Old" });
    await (await academy.as(WHO.admin)).reviewTemplates.setActive({ id: aside, version: 1, active: false });
    const { roundId } = await takenRound(academy);
    const room = await (await academy.as(WHO.coach)).reviews.room({ roundId });
    expect(room.templates.map(({ name }) => name)).toEqual(["First look, 9 to 13", "Everybody"]);
    expect(room.templates[0]?.id).toBe(narrow);
  });
});
