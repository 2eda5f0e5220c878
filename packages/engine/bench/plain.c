/*
 * The yardstick: the search as a plain loop, every formula as in a textbook, everything computed
 * anew at each point. Compiled for one number of components; data, bounds, limits and ranking come
 * in a text file that the bench writes from the project's own data (see plainInput.ts).
 *
 *   cc -O3 -march=native -DCOMPONENTS=5 -DLIMITS=6 plain.c -lm
 *   ./a.out FILE      one line of counts and of seconds of processor time, then the ids kept, best first
 */
#include <float.h>
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define MOST_ELEMENTS 118
#define MOST_ENTRIES 16
#define GAS_CONSTANT 8.314462618 /* J/(mol K) */

/* Seven limits have the tree where eight have the spread of electronegativities. */
enum { DELTA, OMEGA, VEC, ENTHALPY, DENSITY, COST, CHI_SPREAD, LOGISTIC, QUANTITIES, TREE = CHI_SPREAD };

/* What is known of each element: u, g/cm3, pm, K, -, currency/kg, Pauling. */
static double mass[MOST_ELEMENTS], density[MOST_ELEMENTS], radius[MOST_ELEMENTS], melting[MOST_ELEMENTS];
static double valence[MOST_ELEMENTS], price[MOST_ELEMENTS], pauling[MOST_ELEMENTS];
static double enthalpy[MOST_ELEMENTS][MOST_ELEMENTS]; /* kJ/mol */
static int lowest[MOST_ELEMENTS], highest[MOST_ELEMENTS];
static int elements, total, oneIn, group;

static double least[LIMITS], greatest[LIMITS];
static double logistic[5]; /* 1/(1 + exp(-(a0 + a1 dH + a2 delta + a3 min(omega, 8) + a4 spread))) */

static int keep, preferHigh, entries;
static struct { int quantity, high; double from, to, weight, shape; } rank[MOST_ENTRIES];

typedef struct { double key; int64_t system, point; } Kept;
static Kept *heap;
static int kept;

static int64_t points, passed, passedEach[LIMITS], system_, point_;
static int chosen[COMPONENTS], parts[COMPONENTS];
static int leastBehind[COMPONENTS + 1], mostBehind[COMPONENTS + 1];

static int worse(Kept a, Kept b) {
  if (a.key != b.key) return a.key > b.key;
  if (a.system != b.system) return a.system > b.system;
  return a.point > b.point;
}

static void sink(int at, int size) {
  Kept one = heap[at];
  for (;;) {
    int below = 2 * at + 1;
    if (below >= size) break;
    if (below + 1 < size && worse(heap[below + 1], heap[below])) below++;
    if (!worse(heap[below], one)) break;
    heap[at] = heap[below];
    at = below;
  }
  heap[at] = one;
}

static void offer(double key) {
  Kept one = {key, system_, point_};
  if (kept < keep) {
    int at = kept++;
    while (at > 0 && worse(one, heap[(at - 1) / 2])) {
      heap[at] = heap[(at - 1) / 2];
      at = (at - 1) / 2;
    }
    heap[at] = one;
  } else if (worse(heap[0], one)) {
    heap[0] = one;
    sink(0, kept);
  }
}

static double score(const double *value) {
  if (entries == 1) return value[rank[0].quantity];
  double weights = 0, product = 1;
  for (int k = 0; k < entries; k++) weights += rank[k].weight;
  for (int k = 0; k < entries; k++) {
    double share = (value[rank[k].quantity] - rank[k].from) / (rank[k].to - rank[k].from);
    if (!rank[k].high) share = 1 - share;
    share = fmax(0, fmin(1, share));
    product *= pow(pow(share, rank[k].shape), rank[k].weight / weights);
  }
  return product;
}

static inline void visit(void) {
  double c[COMPONENTS], value[QUANTITIES];
  for (int i = 0; i < COMPONENTS; i++) c[i] = (double)parts[i] / total;

  double meanMass = 0, volume = 0, priced = 0, meanRadius = 0, meanMelting = 0, meanValence = 0, entropy = 0;
  for (int i = 0; i < COMPONENTS; i++) {
    int e = chosen[i];
    meanMass += c[i] * mass[e];
    volume += c[i] * mass[e] / density[e];
    priced += c[i] * mass[e] * price[e];
    meanRadius += c[i] * radius[e];
    meanMelting += c[i] * melting[e];
    meanValence += c[i] * valence[e];
    entropy -= c[i] * log(c[i]);
  }
  double spread = 0, mixing = 0;
  for (int i = 0; i < COMPONENTS; i++) {
    double off = 1 - radius[chosen[i]] / meanRadius;
    spread += c[i] * off * off;
    for (int j = 0; j < i; j++) mixing += 4 * enthalpy[chosen[i]][chosen[j]] * c[i] * c[j];
  }
  value[DELTA] = 100 * sqrt(spread);
  value[ENTHALPY] = mixing;
  value[OMEGA] = fmin(1000, meanMelting * GAS_CONSTANT * entropy / fabs(1000 * mixing));
  value[VEC] = meanValence;
  value[DENSITY] = meanMass / volume;
  value[COST] = priced / meanMass;
#if LIMITS == 8
  double meanPauling = 0, variance = 0;
  for (int i = 0; i < COMPONENTS; i++) meanPauling += c[i] * pauling[chosen[i]];
  for (int i = 0; i < COMPONENTS; i++) {
    double off = pauling[chosen[i]] - meanPauling;
    variance += c[i] * off * off;
  }
  value[CHI_SPREAD] = sqrt(variance);
  value[LOGISTIC] = 1 / (1 + exp(-(logistic[0] + logistic[1] * value[ENTHALPY] + logistic[2] * value[DELTA] +
                                   logistic[3] * fmin(value[OMEGA], 8) + logistic[4] * value[CHI_SPREAD])));
#elif LIMITS == 7
  value[TREE] = exp(mixing / 20) * value[OMEGA] + log(1 + value[OMEGA]) * meanValence;
#endif

  points++;
  int all = 1;
  for (int k = 0; k < LIMITS; k++) {
    int pass = value[k] >= least[k] && value[k] <= greatest[k];
    passedEach[k] += pass;
    all &= pass;
  }
  if (!all) return;
  passed++;
  double found = score(value);
  offer(preferHigh ? -found : found);
}

/* All amounts of the elements from `at` on that add up to `rest`. */
static void amounts(int at, int rest) {
  int from = lowest[chosen[at]], to = highest[chosen[at]];
  if (rest - mostBehind[at + 1] > from) from = rest - mostBehind[at + 1];
  if (rest - leastBehind[at + 1] < to) to = rest - leastBehind[at + 1];
  for (int part = from; part <= to; part++) {
    parts[at] = part;
    if (at < COMPONENTS - 2) {
      amounts(at + 1, rest - part);
    } else {
      parts[COMPONENTS - 1] = rest - part;
      visit();
      point_++;
    }
  }
}

/* All systems that continue the elements chosen, in the order of their lists. */
static void systems(int count, int next) {
  if (count < COMPONENTS) {
    for (int e = next; e < elements; e++) {
      chosen[count] = e;
      systems(count + 1, e + 1);
    }
    return;
  }
  if (system_ / group % oneIn == 0) {
    leastBehind[COMPONENTS] = mostBehind[COMPONENTS] = 0;
    for (int i = COMPONENTS - 1; i >= 0; i--) {
      leastBehind[i] = leastBehind[i + 1] + lowest[chosen[i]];
      mostBehind[i] = mostBehind[i + 1] + highest[chosen[i]];
    }
    point_ = 0;
    amounts(0, total);
  }
  system_++;
}

static FILE *file;

static double number(void) {
  double value;
  if (fscanf(file, "%lf", &value) != 1) {
    fputs("The input ends too early.\n", stderr);
    exit(2);
  }
  return value;
}

static void readInput(void) {
  elements = number();
  total = number();
  oneIn = number();
  group = number();
  keep = number();
  preferHigh = number();
  for (int e = 0; e < elements; e++) {
    lowest[e] = number();
    highest[e] = number();
    mass[e] = number();
    density[e] = number();
    radius[e] = number();
    melting[e] = number();
    valence[e] = number();
    price[e] = number();
    pauling[e] = number();
  }
  for (int e = 0; e < elements; e++)
    for (int f = 0; f < elements; f++) enthalpy[e][f] = number();
  /* On a limit means within 1e-12 max(1, |limit|); an open side is DBL_MAX. */
  for (int k = 0; k < LIMITS; k++) {
    double min = number(), max = number();
    least[k] = min <= -DBL_MAX ? -DBL_MAX : min - 1e-12 * fmax(1, fabs(min));
    greatest[k] = max >= DBL_MAX ? DBL_MAX : max + 1e-12 * fmax(1, fabs(max));
  }
  for (int k = 0; k < 5; k++) logistic[k] = number();
  entries = number();
  for (int k = 0; k < entries; k++) {
    rank[k].quantity = number();
    rank[k].high = number();
    rank[k].from = number();
    rank[k].to = number();
    rank[k].weight = number();
    rank[k].shape = number();
  }
}

static double processorSeconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &now);
  return now.tv_sec + now.tv_nsec / 1e9;
}

int main(int count, char **words) {
  file = count == 2 ? fopen(words[1], "r") : NULL;
  if (!file) {
    fputs("Give the file of the search.\n", stderr);
    return 2;
  }
  readInput();
  heap = malloc(sizeof(Kept) * (keep + 1));
  double start = processorSeconds();
  systems(0, 0);
  for (int size = kept - 1; size > 0; size--) {
    Kept last = heap[size];
    heap[size] = heap[0];
    heap[0] = last;
    sink(0, size);
  }
  printf("%.6f %lld %lld", processorSeconds() - start, (long long)points, (long long)passed);
  for (int k = 0; k < LIMITS; k++) printf(" %lld", (long long)passedEach[k]);
  printf("\n");
  for (int k = 0; k < kept; k++) printf("%lld %lld\n", (long long)heap[k].system, (long long)heap[k].point);
  return 0;
}
