"use client";
import { FormRow } from "@/components/ui/form";
import { NumberField } from "@/components/ui/number-field";
import { SelectField } from "@/components/ui/select-field";
import { TextField } from "@/components/ui/text-field";
import { PLAUSIBLE_MAX_PITCHES } from "@/server/domain/throwing/validate-entry";
import {
  MOST_INNINGS_CAUGHT,
  MOST_INTENTIONAL_WALKS,
  TEAM_NAME_MAX_LENGTH,
} from "@/server/domain/throwing/validate-game";
import { type GameDraft, inningsProblem } from "./game-draft";

/** A team as it is chosen. */
export interface TeamChoice {
  id: string;
  name: string;
  hasEnded: boolean;
}

/** What {@link GameFields} take. */
export interface GameFieldsProps {
  game: GameDraft;
  teams: readonly TeamChoice[];
  onChange: (game: GameDraft) => void;
}

const NO_TEAM = { value: "", label: "No team" };

/** What a game says beside its pitches: all of it can be left out. */
export function GameFields({ game, teams, onChange }: GameFieldsProps) {
  const change = (part: Partial<GameDraft>) => onChange({ ...game, ...part });
  const offered = teams.filter((team) => !team.hasEnded || team.id === game.teamId);
  return (
    <>
      <FormRow>
        <TextField
          label="Innings pitched"
          hint="As 2 or 2 1/3"
          inputMode="text"
          maxLength={12}
          isOptional
          value={game.innings}
          onChange={(innings) => change({ innings })}
          error={inningsProblem(game.innings)}
        />
        <NumberField
          label="Pitches before the last batter"
          hint="Some books count rest by these"
          min={0}
          max={PLAUSIBLE_MAX_PITCHES}
          isOptional
          value={game.pitchesAtLastBatter}
          onChange={(pitchesAtLastBatter) => change({ pitchesAtLastBatter })}
        />
      </FormRow>
      <FormRow>
        <NumberField
          label="Innings caught"
          hint="An inning begun counts as one"
          min={0}
          max={MOST_INNINGS_CAUGHT}
          isOptional
          value={game.inningsCaught}
          onChange={(inningsCaught) => change({ inningsCaught })}
        />
        <NumberField
          label="Intentional walks"
          hint="Announced, without a pitch"
          min={0}
          max={MOST_INTENTIONAL_WALKS}
          isOptional
          value={game.intentionalWalks}
          onChange={(intentionalWalks) => change({ intentionalWalks })}
        />
      </FormRow>
      <FormRow>
        {offered.length > 0 ? (
          <SelectField
            label="For the team"
            options={[NO_TEAM, ...offered.map((team) => ({ value: team.id, label: team.name }))]}
            isOptional
            value={game.teamId ?? NO_TEAM.value}
            onChange={(teamId) => change({ teamId: teamId || null })}
          />
        ) : null}
        <TextField
          label="Against"
          maxLength={TEAM_NAME_MAX_LENGTH}
          isOptional
          value={game.opponent}
          onChange={(opponent) => change({ opponent })}
        />
      </FormRow>
    </>
  );
}
