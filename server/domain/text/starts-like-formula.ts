/**
 * Whether a spreadsheet program could run a text as a formula: it starts, be it after spaces or characters that are not
 * seen, with = + - @ (their full-width forms too) or with a control character such as TAB, CR, LF or NUL. The union of
 * the characters that OWASP's page on CSV injection and ASVS 5.0 (1.2.10) name.
 * @example startsLikeFormula("=1+1") // true
 */
export function startsLikeFormula(text: string): boolean {
  return /^[\s\p{Cc}\p{Cf}]*[=+\-@＝＋－＠]|^[\p{Zs}\p{Cf}]*\p{Cc}/u.test(text);
}
