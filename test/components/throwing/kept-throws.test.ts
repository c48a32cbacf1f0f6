import { describe, expect, it } from "vitest";
import { forgetFamily, rememberedFamily, rememberFamily } from "@/components/throwing/device-memory";
import { type KeptThrows, MOST_KEPT, type Sending, ThrowKeeper } from "@/components/throwing/kept-throws";

/** A device's store; `room` characters of it. */
function storeOf(room = Number.POSITIVE_INFINITY) {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (place: string) => held.get(place) ?? null,
    removeItem: (place: string) => void held.delete(place),
    setItem(place: string, text: string) {
      if (text.length > room) throw new Error("QuotaExceededError");
      held.set(place, text);
    },
  };
}

const ROW: KeptThrows = {
  id: "11111111-1111-4111-8111-111111111111",
  personId: "per_guardian",
  givenName: "Kit",
  throws: { athleteId: "ath_kit", thrownOn: "2026-11-25", kind: "game", pitches: 40, game: null, pain: null },
  problem: null,
};
const other = (id: string, change: Partial<KeptThrows> = {}): KeptThrows => ({ ...ROW, id, ...change });

/** A way to the academy that answers as told, and what went over it. */
function wayThat(...answers: Sending[]) {
  const sent: string[] = [];
  return {
    sent,
    send: async (row: KeptThrows): Promise<Sending> => {
      sent.push(row.id);
      return answers.shift() ?? { kind: "sent", words: "" };
    },
  };
}
const nobody = () => undefined;

describe("throws kept on a device", () => {
  it("are there after the page was closed, and for their own person alone", () => {
    const store = storeOf();
    new ThrowKeeper(store).keep(ROW);
    const later = new ThrowKeeper(store);
    expect(later.of("per_guardian")).toEqual([ROW]);
    expect(later.of("per_other")).toEqual([]);
  });

  it("are sent oldest first under the id they were kept with, and dropped once they arrived", async () => {
    const keeper = new ThrowKeeper(storeOf());
    keeper.keep(ROW);
    keeper.keep(other("b"));
    const way = wayThat();
    const told: string[] = [];
    await keeper.send("per_guardian", way.send, (row) => told.push(row.id));
    expect(way.sent).toEqual([ROW.id, "b"]);
    expect(told).toEqual(way.sent);
    expect(keeper.all()).toEqual([]);
  });

  it("stay, and the rest waits behind them, while there is no answer; the next try has the same id", async () => {
    const keeper = new ThrowKeeper(storeOf());
    keeper.keep(ROW);
    keeper.keep(other("b"));
    const way = wayThat({ kind: "later" });
    await keeper.send("per_guardian", way.send, nobody);
    expect(way.sent).toEqual([ROW.id]);
    expect(keeper.all()).toHaveLength(2);
    await keeper.send("per_guardian", way.send, nobody);
    expect(way.sent).toEqual([ROW.id, ROW.id, "b"]);
  });

  it("go out once, however often sending is asked for meanwhile", async () => {
    const keeper = new ThrowKeeper(storeOf());
    keeper.keep(ROW);
    const way = wayThat();
    await Promise.all([1, 2, 3].map(() => keeper.send("per_guardian", way.send, nobody)));
    expect(way.sent).toEqual([ROW.id]);
  });

  it("stay with the reason when they are refused, until they are tried again or given up", async () => {
    const keeper = new ThrowKeeper(storeOf());
    keeper.keep(ROW);
    keeper.keep(other("b"));
    const way = wayThat({ kind: "refused", sentence: "The day has not come yet." });
    await keeper.send("per_guardian", way.send, nobody);
    expect(keeper.all()).toEqual([{ ...ROW, problem: "The day has not come yet." }]);
    await keeper.send("per_guardian", way.send, nobody);
    expect(way.sent).toEqual([ROW.id, "b"]);
    keeper.retry(ROW.id);
    await keeper.send("per_guardian", way.send, nobody);
    expect(way.sent).toEqual([ROW.id, "b", ROW.id]);
    expect(keeper.all()).toEqual([]);
  });

  it("are not sent by another person on the same device", async () => {
    const keeper = new ThrowKeeper(storeOf());
    keeper.keep(ROW);
    const way = wayThat();
    await keeper.send("per_other", way.send, nobody);
    expect(way.sent).toEqual([]);
    expect(keeper.of("per_guardian")).toEqual([ROW]);
  });

  it("are bounded; what does not fit is said to be not kept, and nothing that was there is lost", () => {
    const keeper = new ThrowKeeper(storeOf());
    for (let at = 0; at < MOST_KEPT; at += 1) expect(keeper.keep(other(`row ${at}`))).toBe(true);
    expect(keeper.keep(other("one more"))).toBe(false);
    expect(keeper.keep(other("row 3", { givenName: "Robin" }))).toBe(true);
    expect(keeper.all()).toHaveLength(MOST_KEPT);
    const full = new ThrowKeeper(storeOf(300));
    expect(full.keep(ROW)).toBe(true);
    expect(full.keep(other("b"))).toBe(false);
    expect(full.all()).toEqual([ROW]);
  });

  it("of a device that keeps nothing are not kept", () => {
    const closed = {
      getItem: () => {
        throw new Error("SecurityError");
      },
      setItem: () => {
        throw new Error("SecurityError");
      },
    };
    const keeper = new ThrowKeeper(closed);
    expect(keeper.all()).toEqual([]);
    expect(keeper.keep(ROW)).toBe(false);
  });

  it.each([
    "no JSON",
    "{}",
    "null",
    '[{"id":1}]',
    '[{"id":"a","personId":"p","givenName":"G","problem":null,"throws":{}}]',
  ])("that read %j are left out and do not stop what can be read", (text) => {
    const store = storeOf();
    store.held.set("slabside.throws", text);
    const keeper = new ThrowKeeper(store);
    expect(keeper.all()).toEqual([]);
    expect(keeper.keep(ROW)).toBe(true);
    expect(keeper.all()).toEqual([ROW]);
  });

  it("are one list until something changes, here or in another tab, and then whoever listens is told", () => {
    const store = storeOf();
    const keeper = new ThrowKeeper(store);
    let told = 0;
    const end = keeper.listen(() => {
      told += 1;
    });
    expect(keeper.all()).toBe(keeper.all());
    new ThrowKeeper(store).keep(ROW);
    keeper.changedElsewhere();
    expect(keeper.all()).toEqual([ROW]);
    expect(told).toBe(1);
    keeper.drop(ROW.id);
    expect(told).toBe(2);
    end();
    keeper.keep(ROW);
    expect(told).toBe(2);
  });
});

describe("whom a device logs for", () => {
  const FAMILY = { personId: "per_guardian", athletes: [{ athleteId: "ath_kit", givenName: "Kit" }] };

  it("is remembered until they sign out, with ids and given names and nothing else", () => {
    const store = storeOf();
    rememberFamily(store, FAMILY);
    expect(rememberedFamily(store)).toEqual(FAMILY);
    forgetFamily(store);
    expect(rememberedFamily(store)).toBeNull();
  });

  it.each([
    "no JSON",
    "{}",
    '{"personId":"p","athletes":[{"athleteId":"a","givenName":"G","bornOn":"2014-05-10"}]}',
  ])("is nobody when the device holds %j", (text) => {
    const store = storeOf();
    store.held.set("slabside.family", text);
    expect(rememberedFamily(store)).toBeNull();
  });

  it("is nobody on a device without room", () => {
    const store = storeOf(10);
    rememberFamily(store, FAMILY);
    expect(rememberedFamily(store)).toBeNull();
  });
});
