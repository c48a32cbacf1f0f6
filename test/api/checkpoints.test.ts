import { describe, expect, it } from "vitest";
import { makeAcademy, WHO } from "../helpers/academy";
import { because, type Caller, refuses } from "../helpers/refuses";

describe("checkpoints", () => {
  const own = {
    phase: "stride",
    event: "front_foot_contact",
    name: "Glove side stays long",
    absentLooksLike: "The glove flies open.",
    measure: null,
    guide: null,
    wanted: null,
    clearLooksLike: "The glove reaches to the plate.",
    views: ["front"],
    cues: ["Reach"],
    drills: [],
    source: "common practice",
  } as const;

  it("are added, edited, put aside and offered again; phase and event stay", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const input = { ...own, views: [...own.views], cues: [...own.cues], drills: [] };
    const { checkpointId: id } = await admin.checkpoints.add(input);
    const { phase, event, ...words } = input;
    await admin.checkpoints.edit({ ...words, id, version: 1, cues: ["Reach", "Long glove"] });
    await admin.checkpoints.setActive({ id, version: 2, active: false });
    const found = (await admin.checkpoints.list({})).find((each) => each.id === id);
    expect(found).toMatchObject({ phase, event, cues: ["Reach", "Long glove"], active: false, version: 3 });
    const stale = (api: Caller) => api.checkpoints.setActive({ id, version: 2, active: true });
    await refuses(academy, WHO.admin, stale, because("changed_meanwhile"));
    await admin.checkpoints.setActive({ id, version: 3, active: true });
  });

  it("keep what can be measured for them and what shows them, until an admin says otherwise", async () => {
    const academy = await makeAcademy();
    const admin = await academy.as(WHO.admin);
    const shown = { ...own, views: [...own.views], cues: [], drills: [] };
    const { checkpointId: id } = await admin.checkpoints.add({
      ...shown,
      measure: "glove_height",
      guide: "ring",
      wanted: { kind: "nearer", to: 5 },
    });
    const { phase, event, ...words } = shown;
    const found = async () => (await admin.checkpoints.list({})).find((each) => each.id === id);
    const said = { measure: "glove_height", guide: "ring", wanted: { kind: "nearer", to: 5 } };
    expect(await found()).toMatchObject(said);
    await admin.checkpoints.edit({ ...words, id, version: 1, measure: null, guide: "level", wanted: null });
    expect(await found()).toMatchObject({ measure: null, guide: "level", wanted: null });
  });

  it("refuse a view named twice, no view, and an unknown id", async () => {
    const academy = await makeAcademy();
    const input = { ...own, cues: [], drills: [] };
    for (const views of [[], ["front", "front"]] as ("front" | "back")[][]) {
      await refuses(academy, WHO.admin, (api) => api.checkpoints.add({ ...input, views }), {
        code: "BAD_REQUEST",
      });
    }
    const ghost = (api: Caller) => api.checkpoints.setActive({ id: "ghost", version: 1, active: false });
    await refuses(academy, WHO.admin, ghost, because("not_found"));
  });
});
