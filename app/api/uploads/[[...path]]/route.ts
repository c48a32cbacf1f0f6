import { receiveUpload } from "@/server/api/handlers/uploads";

export { receiveUpload as DELETE, receiveUpload as HEAD, receiveUpload as PATCH, receiveUpload as POST };
