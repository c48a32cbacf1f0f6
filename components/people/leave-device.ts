import { signOut } from "next-auth/react";
import { forgetFamily } from "@/components/throwing/device-memory";
import { deviceStore } from "@/components/throwing/device-store";
import { forgetAllUnsent } from "@/components/voice/unsent-voice";

/** Signs out here, and leaves nothing on the device of whom one looks after or what was said; throws that wait stay. */
export async function leaveDevice(): Promise<void> {
  forgetFamily(deviceStore);
  await forgetAllUnsent();
  await signOut({ callbackUrl: "/sign-in" });
}
