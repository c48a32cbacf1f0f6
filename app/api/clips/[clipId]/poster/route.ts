import { clipPoster, putClipPoster } from "@/server/api/handlers/clip-poster";

interface Place {
  params: Promise<{ clipId: string }>;
}

async function serve(request: Request, { params }: Place) {
  return clipPoster(request, (await params).clipId);
}

export async function PUT(request: Request, { params }: Place) {
  return putClipPoster(request, (await params).clipId);
}

export { serve as GET, serve as HEAD };
