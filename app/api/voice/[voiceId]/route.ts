import { voiceNote } from "@/server/api/handlers/voice";

async function serve(request: Request, { params }: { params: Promise<{ voiceId: string }> }) {
  return voiceNote(request, (await params).voiceId);
}

export { serve as GET, serve as HEAD };
