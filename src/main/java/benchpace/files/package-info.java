/**
 * Floor 3: what stands in files and on the wire. Plans, events, commands and rosters are read strictly, telling every
 * problem with its place, and written so that they read back equal. No database, no HTTP, no clock. Start at
 * {@link PlanFile} and {@link EventJson}; {@link Json} holds the one configured mapper. Cooling:
 * {@link CureCaseFile} and
 * {@link WaxFile}.
 */
package benchpace.files;
