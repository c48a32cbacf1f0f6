import { answerMonthExport } from "@/server/api/handlers/month-export";

/** The month as a CSV file: `GET /api/exports/month?month=2026-11`. */
export const GET = answerMonthExport;
