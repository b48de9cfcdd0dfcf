/**
 * The paired devices, listed, named and signed out. Start at {@link benchpace.web.devices.DevicesApi}.
 */
package benchpace.web.devices;
