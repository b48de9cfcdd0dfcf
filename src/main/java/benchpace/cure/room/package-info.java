/**
 * What a room and its readings teach: {@link benchpace.cure.room.CureOutlook} gives a candle's range, {@link
 * benchpace.cure.room.RoomFit} what a room has taught.
 */
package benchpace.cure.room;
