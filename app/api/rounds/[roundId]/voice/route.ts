import { keepVoiceNote } from "@/server/api/handlers/voice";

export async function POST(request: Request, { params }: { params: Promise<{ roundId: string }> }) {
  return keepVoiceNote(request, (await params).roundId);
}
