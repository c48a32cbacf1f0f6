import { beforeEach, describe, expect, it, vi } from "vitest";
import { type PictureState, watchPicture } from "@/components/clips/use-picture";

/** A film's element as far as it is read: by the HTML standard 0 is nothing, 1 the metadata, 2 a picture. */
class Film extends EventTarget {
  error: { code: number } | null = null;
  readyState = 0;
  videoWidth = 640;
  paused = true;
  ended = false;
}

function watched(film = new Film()) {
  const told: PictureState[] = [];
  const plays: boolean[] = [];
  const stop = watchPicture(film as unknown as HTMLVideoElement, "clip", {
    setPicture: (state) => told.push(state),
    setPlaying: (isPlaying) => plays.push(isPlaying),
  });
  const tell = (name: string) => film.dispatchEvent(new Event(name));
  return { film, told, plays, stop, tell };
}

beforeEach(() => {
  vi.stubGlobal("HTMLMediaElement", { HAVE_CURRENT_DATA: 2 });
  vi.stubGlobal("MediaError", { MEDIA_ERR_NETWORK: 2, MEDIA_ERR_DECODE: 3 });
  return () => vi.unstubAllGlobals();
});

describe("whether a film has a picture", () => {
  it("comes with its data, and goes when it is loaded anew", () => {
    const { film, told, tell } = watched();
    film.readyState = 4;
    tell("loadeddata");
    film.readyState = 0;
    tell("emptied");
    expect(told).toEqual(["loading", "ready", "loading"]);
  });

  it("is there when it was loaded before anybody looked, and stays so when that is told while it is sought", () => {
    const film = new Film();
    film.readyState = 2;
    const { told, tell } = watched(film);
    film.readyState = 1;
    tell("loadeddata");
    expect(told).toEqual(["ready", "ready"]);
  });

  it("is none of a film whose sound alone is decoded", () => {
    const { film, told, tell } = watched();
    film.videoWidth = 0;
    tell("loadeddata");
    expect(told).toEqual(["loading", "undecodable"]);
  });

  it.each([
    [{ ok: true }, 3, "damaged"],
    [{ ok: true }, 4, "undecodable"],
    [{ ok: true }, 2, "failed"],
    [{ ok: false }, 4, "failed"],
  ] as const)("with an answer of %j and the error %i is %s", async (answer, code, state) => {
    vi.stubGlobal("fetch", async () => answer);
    const { film, told, tell } = watched();
    film.error = { code };
    tell("error");
    await vi.waitFor(() => expect(told).toEqual(["loading", state]));
  });

  it("is told to nobody who has stopped listening", async () => {
    vi.stubGlobal("fetch", async () => ({ ok: false }));
    const { film, told, stop, tell } = watched();
    film.error = { code: 2 };
    tell("error");
    stop();
    tell("emptied");
    await new Promise((next) => setTimeout(next));
    expect(told).toEqual(["loading"]);
  });
});

describe("whether a film plays", () => {
  it("follows the element", () => {
    const { film, plays, tell } = watched();
    film.paused = false;
    tell("play");
    film.ended = true;
    tell("ended");
    expect(plays).toEqual([false, true, false]);
  });
});
