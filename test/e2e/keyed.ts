import type { Page } from "@playwright/test";
import type { Act } from "../bench/keystroke-level";

/**
 * A coach's hands on the keys: presses them, and writes down what each act takes by the operators of the keystroke-level
 * model. A command is prepared in the mind and pressed (M K ...); the letters of an argument and what ends it are
 * pressed alone (rules 0 to 4 of the model).
 */
export class Keyed {
  readonly acts: Act[] = [];
  constructor(
    private readonly page: Page,
    /** What the acts are for, as a row of the breakdown. */
    private part = "",
  ) {}

  /** From here on the acts are for this. */
  for(part: string): this {
    this.part = part;
    return this;
  }

  /** A command: one key, or keys held together such as `Alt+1`. */
  async command(keys: string): Promise<void> {
    await this.page.keyboard.press(keys);
    this.note(`M${"K".repeat(keysIn(keys))}`);
  }

  /** A key that follows from what was done before: the end of an argument, the way to the next field. */
  async onward(keys: string): Promise<void> {
    await this.page.keyboard.press(keys);
    this.note("K".repeat(keysIn(keys)));
  }

  /** An argument, letter by letter. */
  async type(text: string): Promise<void> {
    await this.page.keyboard.type(text);
    this.note("K".repeat(text.length));
  }

  /** Looking through the clip: keys that are watching and no operator time. */
  async look(keys: string, times = 1): Promise<void> {
    for (let time = 0; time < times; time += 1) await this.page.keyboard.press(keys);
  }

  private note(operators: string) {
    this.acts.push({ part: this.part, operators });
  }
}

/** How many keys go down: a held one counts as well. `Shift+Enter` takes two. */
const keysIn = (keys: string) => (keys === "+" ? 1 : keys.split("+").length);
