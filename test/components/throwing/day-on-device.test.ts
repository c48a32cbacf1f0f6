import { expect, it } from "vitest";
import { dayOnDevice } from "@/components/throwing/day-on-device";

it.each([
  ["America/New_York", "2026-11-24"],
  ["Europe/Paris", "2026-11-25"],
])("today on a device in %s is its own day", (zone, day) => {
  expect(dayOnDevice(Date.UTC(2026, 10, 25, 1, 0), zone)).toBe(day);
});
