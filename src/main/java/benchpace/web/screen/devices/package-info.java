/**
 * The paired devices. Start at {@link benchpace.web.screen.devices.DevicesPage}.
 */
package benchpace.web.screen.devices;
