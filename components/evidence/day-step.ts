/**
 * The day that a key leads to, of so many; null for a key that leads nowhere.
 * @example dayStep("ArrowRight", 0, 3) // 1
 * @example dayStep("ArrowRight", 2, 3) // 2: there is none beyond
 */
export function dayStep(key: string, at: number, count: number): number | null {
  if (count === 0) return null;
  const last = count - 1;
  const to: Partial<Record<string, number>> = {
    ArrowRight: at + 1,
    ArrowLeft: at - 1,
    Home: 0,
    End: last,
  };
  const next = to[key];
  return next === undefined ? null : Math.min(last, Math.max(0, next));
}
