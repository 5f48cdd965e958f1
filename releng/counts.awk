# Reads the test reports of the build: names the failed tests with what they said, then the counts of all.
function attribute(name,   text) {
  if (!match($0, " " name "=\"[^\"]*\"")) return ""
  text = substr($0, RSTART + length(name) + 3, RLENGTH - length(name) - 4)
  gsub(/&lt;/, "<", text); gsub(/&gt;/, ">", text); gsub(/&quot;/, "\"", text); gsub(/&#10;/, " ", text); gsub(/&amp;/, "\\&", text)
  return substr(text, 1, 400)
}
/<testsuite / { tests += attribute("tests"); bad += attribute("errors") + attribute("failures"); skipped += attribute("skipped") }
/<testcase / { test = attribute("classname") "." attribute("name") }
/<(failure|error)[ >]/ { print "FAILED " test ": " attribute("type") " " attribute("message") }
END { print tests - bad - skipped + 0 " passed, " bad + 0 " failed, " skipped + 0 " skipped" }
