# Table, slopes and plot of what bench/fleet/growth measured. The slope of processor time in the number of cars, both as logarithms, is
# by least squares over all numbers; beside it the slope between the two greatest, where the start of the program weighs least.
BEGIN { FS = "\t" }
NR == 1 { next }
{
  who = $1; if (!(who in of)) { order[++kinds] = who; of[who] = 0 }
  i = ++of[who]; n[who, i] = $2; clock[who, i] = $3; cpu[who, i] = $4; mb[who, i] = $5
  at[who, $2] = $4
}
function log10(x) { return log(x) / log(10) }
function slope(who, from,    i, x, y, sx, sy, sxx, sxy, m) {
  for (i = from; i <= of[who]; i++) {
    x = log10(n[who, i]); y = log10(cpu[who, i] > 0 ? cpu[who, i] : 0.005)
    sx += x; sy += y; sxx += x * x; sxy += x * y; m++
  }
  return m * sxx - sx * sx > 0 ? (m * sxy - sx * sy) / (m * sxx - sx * sx) : 0
}
function px(x) { return 70 + (log10(x) - low) / (high - low) * 520 }
function py(y) { return 350 - (log10(y) - under) / (over - under) * 310 }
END {
  print "| | cars | by the clock | processor time | cars a second of one core | most memory resident |"
  print "|---|---|---|---|---|---|"
  low = 99; high = -99; under = 99; over = -99
  for (k = 1; k <= kinds; k++) { who = order[k]
    for (i = 1; i <= of[who]; i++) {
      printf "| %s | %d | %.1f s | %.1f s | %.1f | %s |\n", who, n[who, i], clock[who, i], cpu[who, i], (cpu[who, i] > 0 ? n[who, i] / cpu[who, i] : 0), (mb[who, i] == "" ? "" : mb[who, i] " MB")
      x = log10(n[who, i]); y = log10(cpu[who, i] > 0 ? cpu[who, i] : 0.005)
      if (x < low) { low = x } if (x > high) { high = x } if (y < under) { under = y } if (y > over) { over = y }
    } }
  print ""
  for (k = 1; k <= kinds; k++) { who = order[k]
    if (of[who] > 1) {
      last = of[who]
      printf "%s: slope %.3f over all, %.3f between the two greatest; %.2f ms a further car\n\n", who, slope(who, 1), slope(who, last - 1), 1000 * (cpu[who, last] - cpu[who, last - 1]) / (n[who, last] - n[who, last - 1])
    } }
  for (i = 1; i <= of["night"]; i++) {
    if (("loop", n["night", i]) in at) {
      printf "%d cars: the night takes %.2f times the processor time of the loop\n\n", n["night", i], cpu["night", i] / at["loop", n["night", i]]
    } }
  if (high == low) { high = low + 1 }
  low = int(low); high = int(high + 0.999); under = int(under < 0 ? under - 0.999 : under); over = int(over + 0.999); if (over == under) { over++ }
  colour[1] = "#2e3a46"; colour[2] = "#b5651d"; colour[3] = "#3b7a57"; colour[4] = "#7a3b6b"
  print "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 720 400\" font-family=\"sans-serif\" font-size=\"13\"><rect width=\"720\" height=\"400\" fill=\"#fff\"/>" > picture
  for (d = low; d <= high; d++) { printf "<line x1=\"%.1f\" x2=\"%.1f\" y1=\"40\" y2=\"350\" stroke=\"#ddd\"/><text x=\"%.1f\" y=\"370\" text-anchor=\"middle\">10^%d</text>\n", px(10 ^ d), px(10 ^ d), px(10 ^ d), d > picture }
  for (d = under; d <= over; d++) { printf "<line x1=\"70\" x2=\"590\" y1=\"%.1f\" y2=\"%.1f\" stroke=\"#ddd\"/><text x=\"62\" y=\"%.1f\" text-anchor=\"end\">%g s</text>\n", py(10 ^ d), py(10 ^ d), py(10 ^ d) + 4, 10 ^ d > picture }
  print "<text x=\"330\" y=\"392\" text-anchor=\"middle\">cars</text><text x=\"70\" y=\"25\">processor time with the start of the program</text>" > picture
  for (k = 1; k <= kinds; k++) { who = order[k]; points = ""
    for (i = 1; i <= of[who]; i++) {
      x = px(n[who, i]); y = py(cpu[who, i] > 0 ? cpu[who, i] : 0.005)
      points = points sprintf("%.1f,%.1f ", x, y)
      printf "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"%s\"/>\n", x, y, colour[k] > picture
    }
    printf "<polyline points=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"2\"/><text x=\"%.1f\" y=\"%.1f\" fill=\"%s\">%s</text>\n", points, colour[k], x + 8, y + 4, colour[k], who > picture
  }
  print "</svg>" > picture
}
