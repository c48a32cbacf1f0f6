/**
 * Shortest password, in characters (NIST SP 800-63B-4 section 3.1.1.2: 15 where it is the only factor). No rules on
 * kinds of characters, by the same section.
 */
export const PASSWORD_MIN_LENGTH = 15;

/** Longest password taken, in characters; SP 800-63B-4 asks for 64 at least to be allowed. */
export const PASSWORD_MAX_LENGTH = 200;

/* Common passwords of 15 characters and more are repeats, runs and stock phrases; from memory of public breach lists. */
const COMMON_PHRASES = [
  "passwordpassword",
  "password12345678",
  "password123456789",
  "qwertyuiopasdfgh",
  "qwertyuiopasdfghjkl",
  "qwertyuiop123456",
  "1q2w3e4r5t6y7u8i9o0p",
  "1qaz2wsx3edc4rfv",
  "iloveyouforever",
  "letmeinletmeinletmein",
  "correcthorsebatterystaple",
  "administratoradministrator",
  "thisisapassword",
  "baseballbaseball",
  "slabsideslabside",
];

/** Why a password is refused, or null when it is fine. */
export function passwordProblem(password: string): "too_short" | "too_long" | "common" | null {
  const length = [...password].length;
  if (length < PASSWORD_MIN_LENGTH) return "too_short";
  if (length > PASSWORD_MAX_LENGTH) return "too_long";
  return isCommon(password) ? "common" : null;
}

function isCommon(password: string): boolean {
  const plain = password.toLowerCase().replaceAll(/[^a-z0-9]/g, "");
  if (COMMON_PHRASES.includes(plain)) return true;
  return new Set(plain).size <= 4 || isRun(plain) || isRepeat(plain);
}

function isRun(text: string): boolean {
  const steps = [...text].map((letter, index) => letter.charCodeAt(0) - text.charCodeAt(index - 1)).slice(1);
  return steps.length > 0 && steps.filter((step) => step === 1 || step === -9).length >= steps.length - 1;
}

function isRepeat(text: string): boolean {
  const limit = Math.floor(text.length / 3);
  for (let size = 1; size <= limit; size += 1) {
    if (
      text
        .slice(0, size)
        .repeat(Math.ceil(text.length / size))
        .startsWith(text)
    )
      return true;
  }
  return false;
}
