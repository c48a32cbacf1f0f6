/** Who may import whom: a starting point, to be fitted to the house. The picture and the reasons belong in docs/architecture.md. */
const TESTED = "^test/domain/.+[.]test[.]ts$";
module.exports = {
  forbidden: [
    { name: "no-cycles", severity: "error", from: {}, to: { circular: true } },
    {
      name: "no-orphans",
      severity: "error",
      from: { orphan: true, path: "^(server|components|db)/", pathNot: "[.]d[.]ts$" },
      to: {},
    },
    { name: "resolves", severity: "error", from: {}, to: { couldNotResolve: true } },
    {
      name: "domain-is-pure",
      severity: "error",
      comment: "No IO, no framework, no node built-in; of npm only zod, temporal-polyfill and distributions.",
      from: { path: "^server/domain/" },
      to: { pathNot: "^server/domain/|node_modules/(zod|temporal-polyfill|@stdlib)/" },
    },
    {
      name: "distributions-stay-in-statistics",
      severity: "error",
      from: { pathNot: "^server/domain/statistics/distributions[.]ts$" },
      to: { path: "(^|node_modules/)@stdlib/" },
    },
    {
      name: "domain-is-tested",
      severity: "error",
      from: { path: TESTED },
      to: { path: "^server/domain/", pathNot: "^server/domain/errors[.]ts$", reachable: false },
    },
    {
      name: "data-sees-only-domain-and-db",
      severity: "error",
      from: { path: "^server/data/" },
      to: { pathNot: "^(server/(data|domain)|db)/|node_modules/drizzle-orm|^(node:)?crypto$" },
    },
    {
      name: "sql-stays-in-data",
      severity: "error",
      from: { pathNot: "^(server/data|db|test)/" },
      to: { path: "node_modules/(drizzle-orm|better-sqlite3)" },
    },
    {
      name: "tables-stay-in-data",
      severity: "error",
      from: { pathNot: "^(server/data|db|test)/" },
      to: { path: "^db/schema/" },
    },
    {
      name: "routers-stand-alone",
      severity: "error",
      from: { path: "^server/api/routers/([^/]+)[.]ts$" },
      to: { path: "^server/api/routers/", pathNot: "^server/api/routers/$1[.]ts$" },
    },
    {
      name: "server-never-sees-ui",
      severity: "error",
      from: { path: "^(server|db|seed)/" },
      to: { path: "^(app|components)/" },
    },
    {
      name: "pages-go-through-the-api",
      severity: "error",
      from: { path: "^app/" },
      to: { path: "^(server/data|db|seed)/" },
    },
    {
      name: "components-are-client-safe",
      severity: "error",
      from: { path: "^components/" },
      to: { path: "^(server/(data|auth|api|env)|db|seed|app)(/|[.])", dependencyTypesNot: ["type-only"] },
    },
    {
      name: "components-never-see-tables",
      severity: "error",
      from: { path: "^components/" },
      to: { path: "^(server/data|db)/" },
    },
    {
      name: "recharts-stays-in-charts",
      severity: "error",
      from: { pathNot: "^components/charts/" },
      to: { path: "(^|node_modules/)recharts(/|$)" },
    },
    {
      name: "nobody-imports-tests-or-seed",
      severity: "error",
      from: { pathNot: "^(test|seed)/" },
      to: { path: "^(test|seed)/" },
    },
    {
      name: "no-dev-deps-in-the-product",
      severity: "error",
      from: { path: "^(app|components|server|db)/", pathNot: "^db/(drizzle[.]config|generate)[.]ts$" },
      to: { dependencyTypes: ["npm-dev"], dependencyTypesNot: ["type-only"] },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default"],
      mainFields: ["module", "main", "types"],
    },
  },
};
