/** Prints one line to the person who runs the command. */
export function say(line) {
  process.stdout.write(`${line}\n`);
}

/** Ends the command with one clear line. */
export function stop(line) {
  process.stderr.write(`${line}\n`);
  process.exit(1);
}
