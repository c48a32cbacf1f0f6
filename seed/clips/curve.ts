/** A smooth curve of one quantity over time in seconds. */
export type Curve = (timeS: number) => number;

/**
 * A smooth curve through the given values that never swings beyond them: monotone cubic pieces after Fritsch and
 * Carlson (SIAM J Numer Anal 1980; 17:238-246), held level before the first and after the last time. Where `cornerS`
 * is one of the times the curve may turn sharply there, as a foot's path does when the foot lands.
 * @throws RangeError unless the times rise and there is one value for each
 */
export function curveThrough(timesS: readonly number[], values: readonly number[], cornerS?: number): Curve {
  if (timesS.length !== values.length || timesS.length < 2) throw new RangeError("one value for each time");
  if (timesS.some((timeS, n) => n > 0 && timeS <= at(timesS, n - 1))) throw new RangeError("times must rise");
  const corner = cornerS === undefined ? -1 : timesS.indexOf(cornerS);
  if (corner < 1 || corner === timesS.length - 1) return smoothCurve(timesS, values);
  const before = smoothCurve(timesS.slice(0, corner + 1), values.slice(0, corner + 1));
  const after = smoothCurve(timesS.slice(corner), values.slice(corner));
  return (timeS) => (timeS < at(timesS, corner) ? before(timeS) : after(timeS));
}

function smoothCurve(timesS: readonly number[], values: readonly number[]): Curve {
  const slopes = slopesThrough(timesS, values);
  const last = timesS.length - 1;
  return (timeS) => {
    if (timeS <= at(timesS, 0)) return at(values, 0);
    if (timeS >= at(timesS, last)) return at(values, last);
    const n = timesS.findIndex((knotS) => knotS > timeS) - 1;
    const widthS = at(timesS, n + 1) - at(timesS, n);
    const u = (timeS - at(timesS, n)) / widthS;
    const fromHere = (1 + 2 * u) * (1 - u) ** 2 * at(values, n) + u * (1 - u) ** 2 * widthS * at(slopes, n);
    const fromNext = u * u * (3 - 2 * u) * at(values, n + 1) + u * u * (u - 1) * widthS * at(slopes, n + 1);
    return fromHere + fromNext;
  };
}

function slopesThrough(timesS: readonly number[], values: readonly number[]): number[] {
  const widths = timesS.slice(1).map((timeS, n) => timeS - at(timesS, n));
  const secants = widths.map((width, n) => (at(values, n + 1) - at(values, n)) / width);
  return timesS.map((_, n) => {
    if (n === 0) return at(secants, 0);
    if (n === timesS.length - 1) return at(secants, n - 1);
    return slopeBetween(at(widths, n - 1), at(widths, n), at(secants, n - 1), at(secants, n));
  });
}

/** Level at a turning point, else the harmonic mean of both sides weighted by their widths. */
function slopeBetween(widthBefore: number, widthAfter: number, before: number, after: number): number {
  if (before * after <= 0) return 0;
  const weightBefore = 2 * widthAfter + widthBefore;
  const weightAfter = widthAfter + 2 * widthBefore;
  return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
}

function at(numbers: readonly number[], n: number): number {
  const number = numbers[n];
  if (number === undefined) throw new RangeError(`nothing at ${n}`);
  return number;
}

/** Numbers in any arrangement: what can be moved smoothly from one posture to the next. */
export type Shape = number | readonly Shape[] | { readonly [part: string]: Shape };

/**
 * Smooth curves through every number of shapes that are all built alike.
 * @param cornersS parts, by name, whose numbers turn sharply at the given time
 */
export function shapeThrough<S extends Shape>(
  timesS: readonly number[],
  shapes: readonly S[],
  cornersS: Readonly<Record<string, number>> = {},
): (timeS: number) => S {
  return movingShape(timesS, shapes, cornersS, undefined) as (timeS: number) => S;
}

function movingShape(
  timesS: readonly number[],
  shapes: readonly Shape[],
  cornersS: Readonly<Record<string, number>>,
  cornerS: number | undefined,
): (timeS: number) => Shape {
  const [first] = shapes;
  if (typeof first === "number") return curveThrough(timesS, shapes.map(Number), cornerS);
  const parts = Object.keys(first ?? {}).map((name) => {
    const values = shapes.map((shape) => (shape as { readonly [part: string]: Shape })[name] ?? 0);
    return [name, movingShape(timesS, values, cornersS, cornersS[name] ?? cornerS)] as const;
  });
  if (Array.isArray(first)) return (timeS) => parts.map(([, part]) => part(timeS));
  return (timeS) => Object.fromEntries(parts.map(([name, part]) => [name, part(timeS)]));
}
