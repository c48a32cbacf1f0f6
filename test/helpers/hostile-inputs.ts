/** An input with one fault, and the fault in words. */
export interface HostileInput {
  fault: string;
  input: unknown;
}

type Fields = Record<string, unknown>;

const HUGE = "x".repeat(100_001);

/**
 * Wrong versions of a right input: not an object, a field left out, a field too many, and every field of every depth
 * as a value of another kind, as huge text or as a number that is none.
 */
export function malformedVersions(example: Fields): HostileInput[] {
  const whole: HostileInput[] = [
    { fault: "nothing", input: undefined },
    { fault: "null", input: null },
    { fault: "text", input: "text" },
    { fault: "a list", input: [example] },
    { fault: "a field too many", input: { ...example, somethingElse: 1 } },
    { fault: "a prototype", input: JSON.parse(`{"__proto__": {"admin": true}, "extra": 1}`) },
  ];
  return [...whole, ...fieldFaults(example)];
}

function fieldFaults(example: Fields): HostileInput[] {
  return Object.keys(example).flatMap((key) => {
    const { [key]: value, ...others } = example;
    const wrong = wrongValues(value).map(([word, hostile]) => ({
      fault: `${key} as ${word}`,
      input: { ...others, [key]: hostile },
    }));
    return [{ fault: `no ${key}`, input: others }, ...wrong, ...deeperFaults(key, value, others)];
  });
}

function deeperFaults(key: string, value: unknown, others: Fields): HostileInput[] {
  const inside = Array.isArray(value) ? value[0] : value;
  if (typeof inside !== "object" || inside === null) return [];
  return fieldFaults(inside as Fields).map(({ fault, input }) => ({
    fault: `${key}: ${fault}`,
    input: { ...others, [key]: Array.isArray(value) ? [input] : input },
  }));
}

function wrongValues(value: unknown): [string, unknown][] {
  if (typeof value === "string")
    return [
      ["huge text", HUGE],
      ["a number", 7],
      ["an object", { $gt: "" }],
      ["a list", [value]],
    ];
  if (typeof value === "number") {
    return [
      ["text", "7"],
      ["not a number", Number.NaN],
      ["endless", Number.POSITIVE_INFINITY],
      ["far below", -1e9],
      ["broken", 1.5],
    ];
  }
  if (typeof value === "boolean")
    return [
      ["text", "true"],
      ["a number", 1],
    ];
  if (Array.isArray(value))
    return [
      ["text", "a"],
      ["an object", {}],
      ["too many", Array.from({ length: 3000 }, () => value[0])],
    ];
  if (value === null)
    return [
      ["true", true],
      ["a list", [1]],
    ];
  return [
    ["text", "a"],
    ["a list", []],
  ];
}

/** Versions of a right input in which each id is one of nothing. */
export function foreignVersions(example: unknown): unknown[] {
  if (typeof example !== "object" || example === null) return [];
  const fields = example as Fields;
  return Object.keys(fields)
    .filter((key) => SUBJECT_KEYS.includes(key))
    .map((key) => ({ ...fields, [key]: Array.isArray(fields[key]) ? ["no_such_thing"] : "no_such_thing" }));
}

/* The ids by which an input reaches its athlete. */
const SUBJECT_KEYS = [
  "athleteId",
  "athleteIds",
  "clipId",
  "correctionId",
  "reviewId",
  "entryId",
  "measurementId",
  "requestId",
  "setId",
  "itemId",
  "outingId",
  "sessionId",
];
