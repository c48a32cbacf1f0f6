import { pino } from "pino";
import { env } from "./env";

/** The log of the process: one JSON line each on standard output. Ids only, never names, texts or tokens. */
export const log = pino({ level: env.LOG_LEVEL, base: null });
