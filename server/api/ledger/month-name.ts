import { z } from "zod";

/** A month that can be: `YYYY-MM`, from 2000 to 2199. */
export const monthName = z.string().regex(/^2[01]\d\d-(0[1-9]|1[0-2])$/, "a month, as YYYY-MM");
