import { FilePathSource, Input, Logging, LogLevel, MATROSKA, MP4, QTFF, WEBM } from "mediabunny";

// The library prints its doubts about a file to the console; what matters here comes back as a fact instead.
Logging.level = LogLevel.Silent;

/**
 * Opens the clip at `path` for reading, hands it to `work` and closes it again, however `work` ends.
 * Only MP4, QuickTime, WebM and Matroska are tried: what phones and browsers record.
 */
export async function withOpenClip<Result>(
  path: string,
  work: (input: Input) => Promise<Result>,
): Promise<Result> {
  const source = new FilePathSource(path, { handleUnhandledError: () => undefined });
  const input = new Input({ source, formats: [MP4, QTFF, WEBM, MATROSKA] });
  try {
    return await work(input);
  } finally {
    input.dispose();
  }
}
