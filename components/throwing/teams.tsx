"use client";
import { useState } from "react";
import { Button } from "@/components/ui/button";
import { ConfirmDialog } from "@/components/ui/confirm-dialog";
import { Form, FormActions, FormRow } from "@/components/ui/form";
import { SelectField } from "@/components/ui/select-field";
import { TextField } from "@/components/ui/text-field";
import { CommandProblem } from "@/components/wire/command-problem";
import { textOf } from "@/components/wire/form-values";
import { useCommand } from "@/components/wire/use-command";
import { TEAM_NAME_MAX_LENGTH } from "@/server/domain/throwing/validate-game";
import type { ThrowingAnswer } from "./arm-answer";
import styles from "./throwing-page.module.css";

type Team = ThrowingAnswer["teams"]["teams"][number];

/** The teams and leagues an athlete pitches for, each with the book it plays by; the stricter book wins. */
export function Teams({ athleteId, teams: answer }: { athleteId: string; teams: ThrowingAnswer["teams"] }) {
  const { teams, mayManage, books } = answer;
  const current = teams.filter((team) => !team.hasEnded);
  return (
    <>
      {current.length > 0 ? (
        <ul className={styles.rows}>
          {current.map((team) => (
            <li key={team.id}>
              <span>
                {team.name}
                <span className={styles.quiet}>plays by {team.bookName}</span>
              </span>
              {mayManage ? <EndTeam team={team} /> : null}
            </li>
          ))}
        </ul>
      ) : (
        <p>No team is named. Only the athlete's own book is asked.</p>
      )}
      {mayManage ? <AddTeam athleteId={athleteId} books={books} /> : null}
    </>
  );
}

function EndTeam({ team }: { team: Team }) {
  const [isAsking, setAsking] = useState(false);
  const end = useCommand((api, input: { teamId: string }, once) => api.teams.end.mutate(input, once));
  return (
    <>
      <Button variant="link" isSmall aria-label={`End ${team.name}`} onPress={() => setAsking(true)}>
        End
      </Button>
      <ConfirmDialog
        title={`Has the time with ${team.name} ended?`}
        confirmText="End it"
        isOpen={isAsking}
        isPending={end.pending}
        onConfirm={() => void end.run({ teamId: team.id }).then(() => setAsking(false))}
        onCancel={() => setAsking(false)}
      >
        Its book is no longer asked. What was logged for it stays on the log.
      </ConfirmDialog>
    </>
  );
}

interface NewTeam {
  athleteId: string;
  name: string;
  ruleBookId: string;
}

function AddTeam(props: { athleteId: string; books: ThrowingAnswer["teams"]["books"] }) {
  const { athleteId, books } = props;
  const [ruleBookId, setRuleBookId] = useState<string | null>(null);
  const [errors, setErrors] = useState<Record<string, string>>({});
  const [added, setAdded] = useState(0);
  const add = useCommand((api, input: NewTeam, once) => api.teams.add.mutate(input, once));

  async function submit(data: FormData) {
    const name = textOf(data, "name");
    setErrors({
      ...(name === "" ? { name: "Name the team or league." } : {}),
      ...(ruleBookId === null ? { ruleBookId: "Choose the book it plays by." } : {}),
    });
    if (name === "" || ruleBookId === null) return;
    if (!(await add.run({ athleteId, name, ruleBookId }))) return;
    setRuleBookId(null);
    setAdded(added + 1);
  }

  return (
    <Form onSubmit={(data) => void submit(data)} errors={errors} aria-label="Add a team">
      <CommandProblem problem={add.problem} />
      <FormRow key={added}>
        <TextField label="Team or league" name="name" maxLength={TEAM_NAME_MAX_LENGTH} />
        <SelectField
          label="Plays by"
          name="ruleBookId"
          options={books.map((book) => ({ value: book.id, label: book.name }))}
          value={ruleBookId}
          onChange={setRuleBookId}
        />
      </FormRow>
      <FormActions>
        <Button type="submit" isPending={add.pending}>
          Add the team
        </Button>
      </FormActions>
    </Form>
  );
}
