import { monthFile } from "@/server/exports/month-file";
import { answerRoute } from "../guard-route";
import { monthName } from "../ledger/month-name";
import { refuseRequest } from "../request-guard";

/** Serves a month as a CSV file in UTF-8, to be saved and not shown. */
export function answerMonthExport(request: Request): Promise<Response> {
  return answerRoute(request, { action: "ledger.export" }, async ({ db }) => {
    const month = monthName.safeParse(new URL(request.url).searchParams.get("month"));
    if (!month.success) return refuseRequest(400, "Say which month, as in ?month=2026-11.");
    const { fileName, csv } = await monthFile(db, month.data);
    return new Response(csv, {
      headers: {
        "content-type": "text/csv; charset=utf-8",
        "content-disposition": `attachment; filename="${fileName}"`,
        "cache-control": "private, no-store",
        "x-content-type-options": "nosniff",
      },
    });
  });
}
