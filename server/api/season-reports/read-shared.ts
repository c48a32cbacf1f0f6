import "server-only";
import { TRPCError } from "@trpc/server";
import { refusalOf } from "@/server/refusal-of";
import { pageCaller } from "../page-caller";
import { pageFault } from "../page-fault";

type Caller = Awaited<ReturnType<typeof pageCaller>>;
type Shared = NonNullable<Awaited<ReturnType<Caller["seasonReports"]["shared"]>>>;

/** The report behind a link; else nothing, whatever the reason, with the words to wait for an address that tried too many. */
export async function readShared(
  token: string,
): Promise<{ kind: "report"; shared: Shared } | { kind: "none"; wait: string | null }> {
  try {
    const shared = await (await pageCaller()).seasonReports.shared({ token });
    return shared ? { kind: "report", shared } : { kind: "none", wait: null };
  } catch (error) {
    if (!(error instanceof TRPCError)) throw pageFault(error);
    if (error.code === "BAD_REQUEST") return { kind: "none", wait: null };
    if (error.code === "TOO_MANY_REQUESTS") return { kind: "none", wait: refusalOf(error)?.message ?? null };
    throw pageFault(error);
  }
}
