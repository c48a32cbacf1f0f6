/** The older driver answers to the same calls as the newer one. */
declare module "better-sqlite3-node20" {
  import Database = require("better-sqlite3");
  export = Database;
}
