import type { Metadata } from "next";
import { ResetRequest } from "@/components/people/reset-request";

export const metadata: Metadata = { title: "New password" };

export default function ForgotPage() {
  return <ResetRequest />;
}
