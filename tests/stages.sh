# Sourced by tests/run: one function a stage. Each runs in a process of its own under `set -e`, from the root of the project, its
# output in build/logs. A stage fails by its exit code. Write `if grep ...; then exit 1; fi`: a `! grep` stops nothing.

program=build/dev/app/feltmark

first_stages=(packages build)
waiting_stages=(crash)     # mostly waits for the disk
patient_stages=(lint asan) # only compute, so they run at low priority
all_stages=(packages build format layers tree unit papers install benchmark secrets accessibility crash lint asan)

list_stages() {
    cat <<'TEXT'
packages       install the Debian packages of app/packages.txt, program and tests
build          preset dev: program, tests, check programs, benchmark
format         clang-format and qmlformat would change nothing
layers         model sees nothing of reports, app or Qt; reports nothing of app, Qt Gui or Quick; system calls in one place
tree           no machine path, no download host, no unfinished mark, no overlong file
lint           clang-tidy over every source, qmllint over every screen
unit           every test of preset dev
papers         papers of the demo clients: PDF/UA, print size, fonts, braille limits
install        install rules, menu entry and metainfo; the installed program makes papers
benchmark      the benchmark starts and ends
asan           preset asan: every test under the address and undefined-behaviour sanitizers
crash          the store under kill -9 and failing writes
secrets        nothing of a client in plain sight during the whole job; no database symbol is visible
accessibility  every screen by keys and screen reader alone
TEXT
}

# tool NAME: path of a check tool; where it is missing the reason is noted and the answer is no.
tool() {
    if [ -x "$FELTMARK_TOOLS/$1" ]; then
        printf '%s\n' "$FELTMARK_TOOLS/$1"
        return
    fi
    printf '  %s: what %s checks\n' "${FUNCNAME[1]#stage_}" "$1" >>"$left_out"
    return 1
}

# tracked PATTERN...: files of the project that match.
tracked() {
    if git -c safe.directory='*' rev-parse >/dev/null 2>&1; then
        git -c safe.directory='*' ls-files -- "$@"
    else
        local pattern
        for pattern in "$@"; do find . -name "$pattern" -not -path './build/*' -printf '%P\n'; done | sort -u
    fi
}

stage_packages() {
    install_packages app test
}

stage_build() {
    [ -d build/dev ] || require_disk "$root" 6
    cmake --preset dev
    cmake --build --preset dev
}

stage_format() {
    local file wrong=0
    tracked '*.cpp' '*.h' | xargs -r clang-format --dry-run --Werror || wrong=1
    for file in $(tracked '*.qml'); do
        # This qmlformat drops the value of the pragma.
        /usr/lib/qt6/bin/qmlformat "$file" | sed 's/^pragma ComponentBehavior$/&: Bound/' | diff -u "$file" - || wrong=1
    done
    return $wrong
}

# refuse SENTENCE PATTERN FILE...: fails where a line of the files matches.
refuse() {
    local sentence=$1 pattern=$2
    shift 2
    [ $# -gt 0 ] || return 0
    if grep -nE "$pattern" "$@" /dev/null; then
        say "$sentence"
        return 1
    fi
}

stage_layers() {
    local model reports others wrong=0
    mapfile -t model < <(tracked 'model/*')
    mapfile -t reports < <(tracked 'reports/*')
    refuse "model looks upward" '#include +"(reports|app)/' "${model[@]}" || wrong=1
    refuse "model knows Qt" '#include +<Q|Qt6::' "${model[@]}" || wrong=1
    refuse "reports looks upward" '#include +"app/' "${reports[@]}" || wrong=1
    refuse "reports knows more of Qt than QtCore" \
        'Qt6::(Gui|Qml|Quick|Widgets|Pdf)|#include +<(Qt(Gui|Qml|Quick|Widgets|Pdf)|QGui|QQml|QQuick|QImage|QFont|QPainter|QColor|QWindow|QPdf)' \
        "${reports[@]}" || wrong=1
    mapfile -t others < <(tracked '*.cpp' '*.h' | grep -vE '^(tests/)?model/(store|database|audit|migrations)[a-z_]*\.(cpp|h)$')
    refuse "only the store may speak to the database" '#include +[<"](sqlcipher/)?sqlite3\.h|#include +"model/database' \
        "${others[@]}" || wrong=1
    mapfile -t others < <(tracked 'model/*' 'reports/*' 'app/*' | grep -E '\.(cpp|h)$' | grep -vE '/(platform|terminal)[a-z_]*\.(cpp|h)$')
    refuse "what depends on the operating system belongs into platform.*" \
        '#include +<(unistd|fcntl|pwd|signal|windows|sys/[a-z]+|linux/[a-z]+)\.h>' "${others[@]}" || wrong=1
    return $wrong
}

stage_tree() {
    local files code wrong=0
    mapfile -t files < <(tracked '*')
    mapfile -t code < <(tracked '*.cpp' '*.h' '*.qml' '*.sh' '*.py')
    refuse "a path of somebody's machine" '(^|[^A-Za-z0-9.~_}])/(home|root|work)/[a-z]' "${files[@]}" || wrong=1
    refuse "a fixed temp folder" '"/(tmp|var)/' $(tracked 'model/*' 'reports/*' 'app/*') || wrong=1
    refuse "a download host" 'https?://[^/ ]*(artifact|registr[y]|mirror|proxy)' "${files[@]}" || wrong=1
    refuse "an unfinished mark" '\b(TO[D]O|FIX[M]E|XX[X])\b|(DISABLE[D]_|GTEST_SKI[P])' "${code[@]}" || wrong=1
    if wc -l "${code[@]}" | awk '$2 != "total" && $1 > 450 { print; found = 1 } END { exit !found }'; then
        say "over 450 lines: would you find your room in it?"
        wrong=1
    fi
    return $wrong
}

stage_lint() {
    local wrong=0
    # clang 14 cannot read JSON.hh of qpdf 11 as C++20 (a vector of an incomplete type), so what includes it is left out.
    tracked '*.cpp' | xargs -r grep -LE '#include +[<"](qpdf/|reports/pdf_marks)' |
        xargs -r -P "$(nproc)" -n 1 python3 tests/tidy.py build/dev || wrong=1
    cmake --build build/dev --target all_qmllint || wrong=1
    return $wrong
}

stage_unit() {
    ctest --preset dev
}

stage_papers() {
    local folder=build/checked-papers
    rm -rf "$folder"
    "$program" papers --demo all --out "$folder"
    tool pdfua-check || true
    tests/reports/check_papers.sh build/dev "$FELTMARK_TOOLS" "$folder"
    # The sheets of the reading trial end in print that is too small, on purpose: no smallest size there.
    local sheets=build/checked-reading-sheets
    rm -rf "$sheets"
    "$program" reading-sheet --version A --distance 40 --out "$sheets"
    "$program" reading-sheet --version B --distance 25 --out "$sheets"
    "$program" reading-sheet --version C --distance 50 --out "$sheets"
    POINTS=3 tests/reports/check_papers.sh build/dev "$FELTMARK_TOOLS" "$sheets"
    for sheet in "$sheets"/*.pdf; do tests/reports/measure_reading_sheet.py "$sheet"; done
}

stage_install() {
    local prefix=$root/build/install
    rm -rf "$prefix"
    cmake --install build/dev --prefix "$prefix"
    desktop-file-validate "$prefix"/share/applications/*.desktop
    appstreamcli validate --no-net "$prefix"/share/metainfo/*.xml
    (cd / && "$prefix/bin/feltmark" --version && "$prefix/bin/feltmark" papers --demo nora --out "$prefix/papers")
    [ -n "$(find "$prefix/papers" -name '*.pdf')" ]
}

stage_benchmark() {
    build/dev/tests/benchmark/benchmark --benchmark_min_time=0.05
    build/dev/tests/benchmark/plan_numbers --seeds 2 large small replan why
    build/dev/tests/benchmark/benchmark_screens --benchmark_min_time=0.01
}

stage_asan() {
    cmake --preset asan
    cmake --build --preset asan
    ctest --preset asan
}

stage_crash() {
    if tool killstorm && tool badwrites; then tests/check/crash.sh build/dev/tests/check/vault_case "$FELTMARK_TOOLS" 300 60; fi
}

# Longer than the tools' 350 ms of quiet before a step is over: other stages run beside these.
export FELTMARK_QUIET_MS=${FELTMARK_QUIET_MS:-500}

stage_secrets() {
    tests/check/hidden_symbols.sh "$program"
    tool hear && tool plainscan || return 0
    local code=0
    tests/app/scan_inside.sh "$program" || code=$?
    # The job is timed by ear and a busy machine can be late: a second try. What the search finds gets none.
    if [ $code = 3 ]; then
        say "the job gets a second try"
        tests/app/scan_inside.sh "$program"
    fi
    [ $code = 0 ] || [ $code = 3 ]
}

stage_accessibility() {
    tool axtree && tool hear || return 0
    tests/app/by_ear.sh "$program"
}
