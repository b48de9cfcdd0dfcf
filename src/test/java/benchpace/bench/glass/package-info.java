/** Pages in a browser that is held to a part of its speed; start with {@link benchpace.bench.glass.SlowedPage}. */
package benchpace.bench.glass;
