import { Notice } from "@/components/ui/notice";
import type { ConversionState } from "@/server/domain/clips/clip";
import { HOW_TO_SEND_OTHERWISE } from "@/server/domain/clips/conversion";

/** For whoever sent a clip: that others may not see it, and how to send it so that they do. Nothing where all can. */
export function NoCopyNote({ conversion }: { conversion: ConversionState | null }) {
  if (conversion !== "no_program" && conversion !== "failed") return null;
  return (
    <Notice
      kind="attention"
      isStatic
      title="This clip plays on some devices alone, so the coach may not see it."
    >
      It is kept. {HOW_TO_SEND_OTHERWISE}
    </Notice>
  );
}
