import { clipVideo } from "@/server/api/handlers/clip-video";

async function serve(request: Request, { params }: { params: Promise<{ clipId: string }> }) {
  return clipVideo(request, (await params).clipId);
}

export { serve as GET, serve as HEAD };
