import type { NextAuthOptions } from "next-auth";
import CredentialsProvider from "next-auth/providers/credentials";
import { nowMs } from "@/server/clock";
import { accountByEmail, endSignIn, SIGN_IN_LIFE_MS, startSignIn } from "@/server/data/accounts";
import { connections } from "@/server/data/connections";
import { newId } from "@/server/data/new-id";
import { unitOfWork } from "@/server/data/unit-of-work";
import { env } from "@/server/env";
import { logFault } from "@/server/log-fault";
import { refusalOf } from "@/server/refusal-of";
import { callerAddress } from "./caller-address";
import { passwordFits } from "./password";
import { countTry, forgetTries } from "./sign-in-limits";

interface Attempt {
  email: string;
  password: string;
  address: string;
  device: string;
}

/**
 * Checks an e-mail and password and starts a sign-in.
 * @returns the ids that the cookie carries, or null when they do not go together
 * @throws Refusal `too_many_tries`
 */
export async function signInWith(attempt: Attempt): Promise<{ personId: string; signInId: string } | null> {
  await countTry(attempt.email, attempt.address);
  const on = connections(env.databasePath);
  const found = await accountByEmail(on.reader, attempt.email);
  const fits = await passwordFits(attempt.password, found?.passwordHash ?? null);
  if (!found || !fits) return null;
  await forgetTries(attempt.email);
  const signInId = newId("sgn");
  await unitOfWork(on, (tx) =>
    startSignIn(tx, { id: signInId, personId: found.personId, device: attempt.device, nowMs: nowMs() }),
  );
  return { personId: found.personId, signInId };
}

/* What is thrown here is shown on the sign-in page as it stands. */
function faultInWords(error: unknown): string {
  const reference = logFault(error, { path: "sign-in" }, "a sign-in failed");
  return `Something went wrong here, not with you. Try again; if it stays, tell the academy this number: ${reference}.`;
}

/** Settings of the sign-in library: credentials only; the cookie holds a person id and a sign-in id and nothing else. */
export const authOptions: NextAuthOptions = {
  secret: env.AUTH_SECRET,
  session: { strategy: "jwt", maxAge: SIGN_IN_LIFE_MS / 1000 },
  pages: { signIn: "/sign-in", error: "/sign-in" },
  providers: [
    CredentialsProvider({
      credentials: { email: {}, password: {} },
      async authorize(credentials, request) {
        const headers = (request.headers ?? {}) as Record<string, string | undefined>;
        try {
          const ids = await signInWith({
            email: String(credentials?.email ?? "").slice(0, 200),
            password: String(credentials?.password ?? "").slice(0, 300),
            address: callerAddress(headers["x-forwarded-for"]),
            device: deviceWord(headers["user-agent"] ?? ""),
          });
          return ids ? { id: ids.personId, signInId: ids.signInId } : null;
        } catch (error) {
          throw new Error(refusalOf(error)?.message ?? faultInWords(error));
        }
      },
    }),
  ],
  events: {
    async signOut({ token }) {
      const { personId, signInId } = token ?? {};
      if (typeof personId !== "string" || typeof signInId !== "string") return;
      await unitOfWork(connections(env.databasePath), (tx) => endSignIn(tx, personId, signInId, nowMs()));
    },
  },
  callbacks: {
    jwt({ token, user }) {
      if (user) return { personId: user.id, signInId: (user as { signInId?: string }).signInId };
      return { personId: token.personId, signInId: token.signInId };
    },
    session({ session, token }) {
      return { expires: session.expires, signInId: token.signInId } as typeof session;
    },
  },
};

/** A coarse word for the device, for the list of sign-ins: system and browser, no versions. */
export function deviceWord(userAgent: string): string {
  const system = /(iPhone|iPad|Android|Windows|Mac OS|Linux)/.exec(userAgent)?.[1] ?? "Unknown system";
  const browser = /(Firefox|Edg|Chrome|Safari)/.exec(userAgent)?.[1]?.replace("Edg", "Edge") ?? "browser";
  return `${system}, ${browser}`;
}
