import { z } from "zod";
import { monthBooks, readMonth } from "../ledger/month-books";
import { monthName } from "../ledger/month-name";
import { query } from "../procedures";
import { router } from "../trpc";

export const ledgerRouter = router({
  /** A month's books: sums taken three ways, what is to mend, the rows, and totals by kind and by coach. */
  month: query({
    action: "ledger.view",
    input: z.strictObject({ month: monthName.nullable() }),
    output: monthBooks,
    run: readMonth,
  }),
});
