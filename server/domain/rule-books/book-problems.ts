import type { z } from "zod";
import type { Rule } from "../throwing/rule";
import { type RuleBook, ruleBookSchema } from "../throwing/rule-book";
import { agesInWords, RULE_KIND_WORDS } from "./rule-in-words";

/**
 * What is wrong with a book that is being written, as a sentence for each field by its path (`rules.0.ageBands.1.ageMin`);
 * empty when nothing is. A gap or an overlap of bands stands at the band that makes it.
 */
export function bookProblems(book: RuleBook): Record<string, string> {
  const parsed = ruleBookSchema.safeParse(book);
  if (parsed.success) return {};
  return Object.fromEntries(
    parsed.error.issues.map((issue) => [issue.path.join("."), problemInWords(issue, book)]),
  );
}

type Issue = z.core.$ZodIssue;

function problemInWords(issue: Issue, book: RuleBook): string {
  const words = `${whereInWords(issue.path, book)}${partInWords(issue.path)} ${faultInWords(issue)}`;
  const sentence = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/.test(sentence) ? sentence : `${sentence}.`;
}

function faultInWords(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return issue.expected === "string" ? "must be filled in" : "must be a whole number";
    case "too_small":
      return issue.origin === "string" || issue.origin === "array"
        ? "must be filled in"
        : `must be at least ${issue.minimum}`;
    case "too_big":
      return `must be at most ${issue.maximum}`;
    default:
      return issue.message;
  }
}

/* The rule and the band that a fault lies in: a book has many fields of one name. */
function whereInWords(path: readonly PropertyKey[], book: RuleBook): string {
  const [list, at, bands, band] = path;
  const rule = list === "rules" ? book.rules[Number(at)] : undefined;
  if (!rule) return "";
  const ages = bandAt(rule, bands, band);
  return `${RULE_KIND_WORDS[rule.kind]}${ages}: `;
}

function bandAt(rule: Rule, list: PropertyKey | undefined, at: PropertyKey | undefined) {
  const bands = (rule as unknown as Record<PropertyKey, unknown>)[list ?? ""];
  const band = Array.isArray(bands) ? bands[Number(at)] : undefined;
  return band ? `, ages ${agesInWords(band.ageMin, band.ageMax)}` : "";
}

/* What the fields are called on the form. */
const PARTS: Record<string, string> = {
  name: "the name",
  source: "the source",
  ageMin: "the first age",
  ageMax: "the last age",
  dailyMaxPitches: "the most in a day",
  minPitches: "the first pitch",
  maxPitches: "the last pitch",
  restDays: "the days of rest",
  restBands: "the rest bands",
  ageBands: "the ages",
  afterCatching: "the ages",
  outsPerDay: "the outs in a day",
  outsWithoutRest: "the outs without rest",
  outs: "the outs over the span",
  days: "the days",
  months: "the months",
  most: "the most",
  runMonths: "the months in one stretch",
  maxDays: "the days in a row",
  inningsThatBarPitching: "the innings caught",
  pitchesThatBarCatching: "the pitches",
  intentionalWalkPitches: "the pitches of an intentional walk",
  effectiveFrom: "the first day",
  effectiveUntil: "the day it ends",
  cutOff: "the cut-off date",
  notes: "a note",
  words: "the words",
};

function partInWords(path: readonly PropertyKey[]): string {
  const names = path.filter((key) => typeof key === "string");
  return PARTS[names.at(-1) ?? ""] ?? "this";
}
