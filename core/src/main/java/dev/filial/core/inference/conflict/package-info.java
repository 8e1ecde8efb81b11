/**
 * Which of many things cannot all be true: smallest sets that contradict themselves. Knows neither
 * plants nor genes; may import nothing of Filial.
 */
package dev.filial.core.inference.conflict;
