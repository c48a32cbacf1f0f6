import { Notice } from "@/components/ui/notice";
import type { Problem } from "./problem";

/** Why a command was not done, beside what was refused; nothing when the form's own summary names the fields. */
export function CommandProblem({ problem }: { problem: Problem | null }) {
  if (!problem || Object.keys(problem.fields).length > 0) return null;
  return <Notice kind="refusal">{problem.sentence}</Notice>;
}
