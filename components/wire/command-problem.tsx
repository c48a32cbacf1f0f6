import { Notice } from "@/components/ui/notice";
import type { Problem } from "./problem";

/** What {@link CommandProblem} takes. */
export interface CommandProblemProps {
  problem: Problem | null;
  /** True where a form shows `problem.fields` itself: what it says is then not said twice. */
  isBesideFields?: boolean;
}

/** Why a command was not done, beside what was refused. */
export function CommandProblem({ problem, isBesideFields = false }: CommandProblemProps) {
  if (!problem || (isBesideFields && Object.keys(problem.fields).length > 0)) return null;
  return <Notice kind="refusal">{problem.sentence}</Notice>;
}
