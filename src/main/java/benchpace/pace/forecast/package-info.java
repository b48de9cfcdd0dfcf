/**
 * When the last seat pours and everyone goes home, drawn from the posterior. Start at {@link
 * benchpace.pace.forecast.FinishForecast}.
 */
package benchpace.pace.forecast;
