import { createTransport, type Transporter } from "nodemailer";
import { env } from "@/server/env";

/** One message on its way. */
export interface Mail {
  to: string;
  subject: string;
  text: string;
}

let transport: Transporter | null = null;

/** Whether a mail server is set; without one notices are kept for an admin to read. */
export function mailIsSet(): boolean {
  return env.SMTP_URL !== undefined;
}

/** Hands a message to the mail server. @throws Error when it is not taken; the caller tries again later. */
export async function sendMail(mail: Mail): Promise<void> {
  if (!env.SMTP_URL) throw new Error("No mail server is set.");
  transport ??= createTransport(env.SMTP_URL, {
    from: env.MAIL_FROM ?? `Slabside <no-reply@${new URL(env.publicUrl).hostname}>`,
  });
  await transport.sendMail({ ...mail, disableFileAccess: true, disableUrlAccess: true });
}
